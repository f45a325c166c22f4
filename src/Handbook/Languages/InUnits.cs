using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Languages;

/// <summary>Quantities for whoever reads in other units: converted first, and in brackets as it was read or printed, for that is the record.</summary>
public static class InUnits
{
    /// <summary>A quantity as it is written, and converted where the reader wants other units.</summary>
    /// <param name="asWritten">With its own unit.</param>
    /// <param name="unit">That unit.</param>
    /// <param name="converted">How it is said in another unit.</param>
    public static Sentence Of(Sentence asWritten, Unit unit, Func<Unit, Sentence> converted) =>
        Sentence.By(tongue =>
            UnitSystems.Other(unit, tongue.Units) is { } other
                ? $"{converted(other).In(tongue)} ({asWritten.In(tongue.With(UnitSystem.AsWritten))})"
                : asWritten.In(tongue)
        );

    /// <summary>One number with its unit.</summary>
    /// <param name="digits">The number as English writes it.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="rounded">Which way it may be rounded.</param>
    public static Sentence Of(string digits, Unit unit, RoundedTo rounded = RoundedTo.Nearest) =>
        Of(Numbered(digits, unit), unit, other => Numbered(ConvertedNumber.Of(digits, unit, other, rounded), other));

    /// <summary>A number and its unit, as they are.</summary>
    /// <param name="digits">The number as English writes it.</param>
    /// <param name="unit">Its unit.</param>
    public static Sentence Numbered(string digits, Unit unit) =>
        Sentence.By(tongue => $"{tongue.Number(digits)} {unit.Symbol}");
}
