using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>The workshop's own parameters of a correction, as they stand in the bench book.</summary>
internal static class Setting
{
    public static T? Quantity<T>(this Point point, string name)
        where T : struct, IQuantity<T> =>
        point.Settings.TryGetValue(name, out var text)
        && Written.Read(text, out var written) is null
        && written.Unit.Dimension == T.Dimension
            ? T.OfBase(written.Base)
            : null;

    public static double? Number(this Point point, string name) =>
        point.Settings.TryGetValue(name, out var text)
        && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    public static bool? Truth(this Point point, string name) =>
        point.Settings.TryGetValue(name, out var text) && bool.TryParse(text, out var truth) ? truth : null;
}
