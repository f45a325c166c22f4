using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Fluids;

/// <summary>At which temperature a mixture of glycol and water forms its first ice.</summary>
/// <remarks>
/// <para><b>Formula.</b> The table, in straight lines between its rows. The second source is tabulated by mass: the volume fraction is
/// turned into a mass fraction by the same rows of the first, then read in straight lines.</para>
/// <para><b>Units.</b> Glycol in % by volume of the mixture, temperatures in °C.</para>
/// <para><b>Source.</b> ASHRAE Handbook Fundamentals 2001 (glycol-freezing.csv); beside it Melinder, IIR 2010
/// (glycol-freezing-melinder.csv), as reprinted with CoolProp.</para>
/// <para><b>Valid when</b> the glycol is pure: ethylene up to 57.8 %, propylene up to 60 %. The two sources lie up to 2.5 K apart for ethylene, 0.5 K for propylene; the
/// inhibitors in a bought coolant shift the point again: where the coolant's maker prints a table, it comes first.</para>
/// </remarks>
public static class CoolantFreezing
{
    /// <summary>The source that is followed.</summary>
    public const string Source = "ASHRAE Handbook Fundamentals 2001";

    private static readonly PublishedTable Table = PublishedTable.Read("glycol-freezing.csv");
    private static readonly PublishedTable Second = PublishedTable.Read("glycol-freezing-melinder.csv");
    private static readonly Mixture Ethylene = new("ethylene");
    private static readonly Mixture Propylene = new("propylene");

    /// <summary>The freezing point.</summary>
    /// <param name="glycol">Which glycol.</param>
    /// <param name="volumeFraction">Glycol by volume of the mixture, 0 to 1.</param>
    /// <returns>Refused as <c>outsideTable</c> beyond the last row.</returns>
    public static Answer<FreezingPoint> Of(Glycol glycol, Ratio volumeFraction)
    {
        var mixture = glycol == Glycol.Ethylene ? Ethylene : Propylene;
        var percent = volumeFraction.Value * 100;
        if (mixture.ByVolume.At(percent) is not { } freezesAt)
            return Answer<FreezingPoint>.Refuse(
                "outsideTable",
                $"The table ends at 57.8 % ethylene and 60 % propylene glycol by volume. More glycol than that protects no further and carries less heat: thin it with water."
            );
        return new FreezingPoint(new(freezesAt), mixture.ElsewhereAt(percent));
    }

    private sealed class Mixture(string glycol)
    {
        private readonly PublishedCurve mass = new(Rows(Table, glycol), "volume", "mass");
        private readonly PublishedCurve byMass = new(Rows(Second, glycol), "mass", "freezesAt");

        public PublishedCurve ByVolume { get; } = new(Rows(Table, glycol), "volume", "freezesAt");

        public Temperature? ElsewhereAt(double volumePercent) =>
            mass.At(volumePercent) is { } massPercent && byMass.At(massPercent) is { } freezesAt
                ? new Temperature(freezesAt)
                : null;

        private static IEnumerable<PublishedTable.Row> Rows(PublishedTable table, string glycol) =>
            table.Rows.Where(r => r["glycol"] == glycol);
    }
}

/// <summary>The two glycols of coolants.</summary>
public enum Glycol
{
    /// <summary>Ethylene glycol, poisonous.</summary>
    Ethylene,

    /// <summary>Propylene glycol.</summary>
    Propylene,
}

/// <summary>Where a mixture begins to freeze.</summary>
/// <param name="FreezesAt">First ice by the source that is followed.</param>
/// <param name="Elsewhere">The same by the second source, or null where it has no rows; the difference is how far either can be trusted.</param>
public sealed record FreezingPoint(Temperature FreezesAt, Temperature? Elsewhere);
