using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;

namespace Witnessmark.Handbook.Tests.Wear;

/// <summary>Wearing parts for the tests, in mm and 1000 km.</summary>
internal static class Parts
{
    public const double Thousand = 1e9; // mm

    public static readonly FleetWear Tread = Fleet(7, 0.45, 0.2, 0.15);

    public static FleetWear Fleet(double start, double rate, double startDeviation, double rateDeviation) =>
        new(new(start), new(rate), new(startDeviation), new(rateDeviation));

    public static WearReading At(double thousands, double value) => new(new(thousands * Thousand), new(value));

    public static WearQuestion Ask(double limit, double now, double next) =>
        new(new(limit), new(now * Thousand), new(next * Thousand));

    public static double? Thousands(Length? distance) => distance?.Millimetres / Thousand;

    /// <summary>A standard normal number (Box and Muller).</summary>
    public static double Draw(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
