using Witnessmark.Handbook.Identity;

namespace Witnessmark.Bench.Judging;

/// <summary>Whether the number on the frame is one, and this machine's.</summary>
internal static class VinJudge
{
    public static (Opinion?, string?) Of(ReadingToJudge judged)
    {
        if (judged.Raw.Count != 1)
            return (null, "One number is read here.");
        var typed = judged.Raw[0].Trim().ToUpperInvariant();
        if (Vin.Read(typed) is not { } vin)
            return (
                Judge.Plain(
                    VerdictWord.Outside,
                    typed,
                    "Not a vehicle identification number",
                    "It has 17 characters: digits and capital letters, never I, O or Q. Read the frame again."
                ),
                null
            );
        if (typed != judged.Machine.Vin)
            return (
                Judge.Plain(
                    VerdictWord.Outside,
                    typed,
                    "Another machine's number",
                    $"This job is for {judged.Machine.Vin}. Read the frame again, or stop: this may be the wrong machine."
                ),
                null
            );
        var years =
            vin.ModelYears.Count == 0 ? "" : $" Model year by the number: {string.Join(" or ", vin.ModelYears)}.";
        return (
            Judge.Plain(VerdictWord.Inside, typed, "This machine's number", $"As on record.{years} {vin.Note}".Trim()),
            null
        );
    }
}
