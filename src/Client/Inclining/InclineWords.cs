using Witnessmark.Bench.Inclining;
using Witnessmark.Bench.Wording;

namespace Witnessmark.Client.Inclining;

/// <summary>Words of the screen that feels where down is.</summary>
internal static class InclineWords
{
    public static string Title(InclineUse use) =>
        use == InclineUse.Lean ? Say($"Upright and level") : Say($"Inclination of the lamp");

    public static string Offer(InclineUse use) =>
        use == InclineUse.Lean
            ? Say($"Is it upright? Lay the phone on it")
            : Say($"Measure with the phone's inclination");

    public static string Begin => Say($"Use the inclination");
    public static string Cancel => Say($"Back");
    public static string LiesStill => Say($"It lies still");
    public static string Again => Say($"Measure again");
    public static string ZeroAgain => Say($"Find its own error again");
    public static string Now => Say($"Now");
    public static string Nothing =>
        Say(
            $"Only this device's inclination is felt. Nothing of it is kept or sent but the number that you take over."
        );

    public static string WhyZero =>
        Say(
            $"A phone has an error of its own, and its lens tilts it. Laid down once and once more turned end for end on the same spot, it tells both its error and the surface's."
        );

    public static string LayFirst =>
        Say($"First: lay the phone on a firm, flat surface, screen up. Tap, then take the hand off.");

    public static string LayTurned =>
        Say($"Second: turn it end for end on the same spot. Tap, then take the hand off.");

    public static string Lay(InclineUse use) =>
        use == InclineUse.Lean
            ? Say(
                $"Third: lay it across the machine where the maker says, or across the fork or the seat rail, its upper end to the machine's right. Tap, then take the hand off."
            )
            : Say(
                $"Third: lay it on the flat of the lamp that its maker names, along the beam, its upper end forward. Tap, then take the hand off. It feels that flat, not the beam: where no maker names one, read the wall."
            );

    public static string Zero(PhoneZero zero) =>
        Say(
            $"Its own error: {Numerals.Plain(zero.Degrees, 2)}°, the surface leaned {Numerals.Plain(zero.Surface, 2)}°."
        );

    public static string Leans(Inclination felt) =>
        Math.Abs(felt.Degrees) <= 2 * felt.Uncertainty ? Say($"Upright as far as this phone can tell: {felt.InWords}.")
        : felt.Degrees > 0 ? Say($"It leans to its left: {felt.InWords}.")
        : Say($"It leans to its right: {felt.InWords}.");

    public static string When(string when) => Say($"The sheet's figure is for: {Sentence.Of(when)}.");

    public static string MaySay =>
        Say(
            $"How far the lean falsifies the level: type where the stick stands. Without it the degrees say no more than they are."
        );

    public static string Offset => Say($"From the middle of the oil to the stick, mm");
    public static string ToLeft => Say($"Stick on the left");
    public static string ToRight => Say($"Stick on the right");
    public static string Marks => Say($"From the low mark to the high one, mm");

    public static string Falsified(double error, double? resolution) =>
        resolution is { } step && Math.Abs(error) < step
            ? Say(
                $"The stick shows {Numerals.Plain(error, 2)} of the distance between its marks too much: less than it can tell ({Numerals.Plain(step, 2)})."
            )
            : Say(
                $"The stick shows {Numerals.Plain(error, 2)} of the distance between its marks too much. Level the machine, then read it: that is better than reckoning."
            );

    public static string Take(Inclination felt) => Say($"Take {felt.AimInWords} over");

    public static string Drawing(double degrees) => Say($"Inclined by {Numerals.Plain(degrees, 1)}°");

    /// <summary>What is in the way, in words, and what to do.</summary>
    public static string InTheWay(string why, InclineUse use) =>
        why switch
        {
            "insecure" => Say(
                $"A browser tells its inclination only to a page that came by HTTPS. Open the shop's secure address. {Instead(use)}"
            ),
            "refused" => Say(
                $"The inclination was refused. Allow motion for this page in the browser's settings. {Instead(use)}"
            ),
            _ => Say($"This device tells no inclination. {Instead(use)}"),
        };

    private static Sentence Instead(InclineUse use) =>
        use == InclineUse.Lean ? (Sentence)$"Or use a spirit level." : (Sentence)$"Or read the wall.";
}
