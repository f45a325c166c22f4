using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>For contracts that answer in the unit that came in: everything brought to that unit.</summary>
internal static class SameUnit
{
    public static double InUnit(Given given, string key, Written written, Unit unit) =>
        written.Unit.Dimension == unit.Dimension
            ? written.In(unit).Value
            : throw given.Wrong(key, $"\"{written}\"", $"a quantity that can be given in {unit}");

    // A width on a temperature scale has no offset: 5 °C of uncertainty is 9 °F of it.
    public static double Width(Given given, string key, Written written, Unit unit) =>
        written.Unit.Dimension == unit.Dimension
            ? written.Value * written.Unit.Factor / unit.Factor
            : throw given.Wrong(key, $"\"{written}\"", $"a quantity that can be given in {unit}");

    public static double NotNegative(Given given, string key, double value) =>
        value >= 0 ? value : throw given.Wrong(key, value.ToString("R", CultureInfo.InvariantCulture), "zero or more");
}
