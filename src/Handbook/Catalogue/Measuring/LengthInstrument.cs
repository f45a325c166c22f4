using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The instrument that lengths were read with, for contracts whose every reading is a length.</summary>
internal static class LengthInstrument
{
    private static readonly Input<Length> Resolution = Take.Quantity<Length>(
        "resolution",
        "smallest step that is read"
    );
    private static readonly Input<Length> PermissibleError = Take.Quantity<Length>(
        "permissibleError",
        "half-width of its error"
    );

    public static readonly Input<Instrument> Taken = Take.Object(
        "instrument",
        "what it was read with",
        [Resolution, PermissibleError],
        g => new Instrument(g.Of(Resolution).Millimetres, g.Of(PermissibleError).Millimetres)
    );
}
