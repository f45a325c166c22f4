using System.Globalization;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>How often work is done, for people: <c>10000 km or 12 months</c> in their language and units.</summary>
internal static class ScheduleWords
{
    /// <summary>The line of a sheet; a part that nobody can read stands as it is.</summary>
    /// <param name="every">As it stands in the sheet.</param>
    public static Sentence Of(string every) =>
        every
            .Split(" or ", StringSplitOptions.TrimEntries)
            .Select(Interval)
            .Aggregate((all, next) => $"{all} or {next}");

    private static Sentence Interval(string part) =>
        Written.Read(part, out var read) is not null ? Sentence.Of(part)
        : read.Unit.Dimension == Dimension.Length
            ? InUnits.Of(read.Value.ToString("0.###", CultureInfo.InvariantCulture), read.Unit)
        : Numerals.With(read.Value, read.Unit);
}
