using System.Globalization;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>What the device in the hand is read with by itself.</summary>
public enum DeviceSense
{
    /// <summary>Its microphone.</summary>
    Microphone,

    /// <summary>Its sense of where down is.</summary>
    Inclination,
}

/// <summary>A reading that the device took by itself: no instrument of the shop says how far it may be off, so the reading does.</summary>
/// <param name="Sense">With what.</param>
/// <param name="Uncertainty">One standard deviation, in the unit of the reading.</param>
public sealed record DeviceReading(DeviceSense Sense, Written Uncertainty)
{
    /// <summary>The senses by their words in entries.</summary>
    public static readonly IReadOnlyDictionary<string, DeviceSense> Words = new Dictionary<string, DeviceSense>
    {
        ["microphone"] = DeviceSense.Microphone,
        ["inclination"] = DeviceSense.Inclination,
    };

    /// <summary>The sense as entries write it.</summary>
    public string Word => Words.First(w => w.Value == Sense).Key;

    /// <summary>As people call it.</summary>
    public Sentence Name =>
        Sense == DeviceSense.Microphone
            ? (Sentence)$"This device's microphone"
            : (Sentence)$"This device's inclination";

    /// <summary>The same as an instrument, so that verdict, screens and papers need to know of no other kind.</summary>
    /// <remarks>
    /// <b>Formula.</b> half-width = √3·u, so that half-width/√3 is u again. <b>Source.</b> JCGM 100:2008 (GUM), 4.3.7.
    /// </remarks>
    /// <param name="datesNeeded">The shop lets nothing without a date of calibration prove a safety point; a device has none.</param>
    public ShopInstrument Instrument(bool datesNeeded) =>
        new(
            Word,
            Name.ToString(),
            Uncertainty.Unit,
            0,
            Uncertainty.Value * Math.Sqrt(3),
            0,
            Math.Min(4, Uncertainty.Value > 0 ? Numerals.DecimalsFor(2 * Uncertainty.Value) : 2),
            null,
            "measure"
        )
        {
            DateNeeded = datesNeeded,
        };

    /// <summary>The uncertainty as entries write it: three figures are more than it is worth.</summary>
    public string InEntry => $"{Uncertainty.Value.ToString("G3", CultureInfo.InvariantCulture)} {Uncertainty.Unit}";
}
