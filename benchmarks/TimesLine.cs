using System.Globalization;

namespace Witnessmark.Benchmarks;

/// <summary>One line of a table of times: the one that is worth a column of its own, median, worst, and the bar.</summary>
internal static class TimesLine
{
    public static void Print(string what, double apart, IEnumerable<double> times, double? bar)
    {
        var sorted = times.Order().ToArray();
        var allowed = bar?.ToString("0", CultureInfo.InvariantCulture) ?? "none";
        Console.WriteLine(
            $"{what, -32} {apart, 8:0} {sorted[sorted.Length / 2], 10:0} {sorted[^1], 10:0} {allowed, 8}"
        );
    }
}
