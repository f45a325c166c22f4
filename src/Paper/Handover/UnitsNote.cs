using Witnessmark.Handbook.Quantities;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What numbers in other units than they were read in are worth.</summary>
internal static class UnitsNote
{
    /// <summary>In a sentence or two; null on a paper that has every quantity as it was read.</summary>
    public static Sentence? Of(Tongue tongue) =>
        tongue.Units == UnitSystem.AsWritten
            ? null
            : (Sentence)
                $"Converted values are rounded, limits into what they permit. In brackets and on the rules: as read or printed; that counts.";

    public static void Write(Pages pages)
    {
        if (Of(pages.Tongue) is { } note)
            pages.Row([Cell.Of(0, Pages.Width, (note, Typeface.Aside))], 3, false);
    }
}
