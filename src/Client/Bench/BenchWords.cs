using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;

namespace Witnessmark.Client.Bench;

/// <summary>Words of the bench screen.</summary>
internal static class BenchWords
{
    public static string LowestMark => Say($"Lowest mark");
    public static string HighestMark => Say($"Highest mark");
    public static string Empty => Say($"empty");
    public static string Dipstick => Say($"Dipstick");
    public static string Left => Say($"Left");
    public static string Right => Say($"Right");
    public static string DateCode => Say($"Date code");
    public static string Percent => Say($"Percent");
    public static string NoInstrument => Say($"No instrument chosen");
    public static string With => Say($"Read with");
    public static string Wrench => Say($"Wrench");
    public static string NotOffered => Say($"Not offered here:");
    public static string Save => Say($"Save reading");
    public static string BeingSaved => Say($"Being saved …");
    public static string SavedHere => Say($"Saved here.");
    public static string BothAgain => Say($"Another reading of both sides");
    public static string OnceMore => Say($"Another reading of the same");
    public static string RightWord => Say(((Sentence)$"Right").Meaning("not wrong"));
    public static string NotRight => Say($"Not right");
    public static string AllRight => Say($"All of them are right");
    public static string Done => Say($"Done");
    public static string ReadAgain => Say($"Read again");
    public static string Cancel => Say($"Back");
    public static string Mark => Say($"Mark");
    public static string MarkWhy => Say($"Paint the stripe, then mark.");
    public static string Corrected => Say($"Correction made");
    public static string Note => Say($"Note");
    public static string Leave => Say($"Leave as it is");
    public static string Undo => Say($"Take back the last entry");
    public static string Next => Say($"Next point");
    public static string AllPoints => Say($"All points of this job");
    public static string Overview => Say($"To the job");
    public static string Again => Say($"Read it again");

    public static string Unit(string unit) => unit == "turns" ? Say($"turns") : unit;

    public static string Caution => Say($"Caution");
    public static string MakersFirst =>
        Say($"The maker's manual, local law and a qualified technician's judgement come first.");
    public static string Sure => Say($"I am sure");
    public static string TypeAgain => Say($"Type it again");
    public static string Correction => Say($"What was done");
    public static string Tighter => Say($"tighter");
    public static string Back => Say($"back");
    public static string BothAdjusters => Say($"Both adjusters");
    public static string Adjuster => Say($"Adjuster");
    public static string LeftAdjuster => Say($"Left adjuster");
    public static string RightAdjuster => Say($"Right adjuster");
    public static string Added => Say($"Added");
    public static string SaveCorrection => Say($"Save correction");
    public static string SaveNote => Say($"Save note");
    public static string NoteLabel => Say($"Note on this point");
    public static string LeaveWhy => Say($"Why is it left as it is?");
    public static string SaveLeave => Say($"Leave it");
    public static string UndoWhy => Say($"Why is it taken back?");
    public static string SaveUndo => Say($"Take it back");
    public static string WroteWhat => Say($"The last entry made on this device:");
    public static string NothingToUndo => Say($"This device has made no entry in this job that could be taken back.");
    public static string OwnWords => Say($"In your own words");
    public static string WordsMissing => Say($"Write a few words first.");
    public static string Earlier => Say($"Done here so far");
    public static string NoSuchPoint => Say($"This job has no such point");
    public static string NoSuchJob => Say($"No such job on this device");
    public static string Figure => Say($"Figure");
    public static string SetTo => Say($"Set the wrench to");
    public static string BelowLow => Say($"Below low");
    public static string Low => Say($"Low");
    public static string High => Say($"High");
    public static string Over => Say($"Over");
    public static string OrPercent => Say($"Type percent");

    public static IReadOnlyList<string> UndoReasons => [Say($"Typed wrong"), Say($"Read wrong"), Say($"Wrong point")];

    public static IReadOnlyList<string> LeaveReasons =>
        [Say($"The owner decided so"), Say($"Part is on order"), Say($"Not on this machine")];

    public static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    public static string OneLabel(ReadingKind kind) =>
        kind switch
        {
            ReadingKind.Tighten => Say($"Clicked at"),
            ReadingKind.Amount => Say($"Put in"),
            ReadingKind.Level => Say($"Level between the marks"),
            ReadingKind.Vin => Say($"Number on the frame"),
            _ => Say($"Reading"),
        };

    public static string ChooseInstrument(ReadingKind kind) =>
        kind == ReadingKind.Tighten ? Say($"Which wrench?") : Say($"Read with what?");

    public static string RoundAt(int at, int all) => Say($"Reading {at} of {all}");

    public static string OfAll(int all) => Say($"of {all}");

    public static string SoFar(IReadOnlyList<string> read, int all, object? unit) =>
        Say($"{read.Count} of {all} read round: {Sentence.List(read.Select(Sentence.Number))} {unit}");

    public static string TurnOn(string? step) =>
        step is null ? Say($"Turn it on, then read.") : Say($"Turn the wheel {step} on, then read.");

    public static string StartRound(string? step) =>
        step is null ? Say($"Read at the chalk mark.") : Say($"Begin at the chalk mark.");

    public static string NextBox(string label) => Say($"Next: {Inside(label)}");

    public static string Clicked(string setting) => Say($"It clicked at {setting}");

    public static string Poured(string amount) => Say($"{amount} went in");

    public static string Meant(string value) => Say($"It is {value}");

    public static string IsSure(string value) => Say($"It really is {value}");

    public static string Missing(ReadingDraft draft) =>
        draft.Point.Reading.Kind switch
        {
            ReadingKind.Seen => Say($"{draft.Slots.Count(s => s.Text.Length == 0)} not answered yet."),
            ReadingKind.Vin => Say($"{draft.Slots[0].Text.Length} of 17 characters."),
            ReadingKind.TyreDate => Say($"Three or four digits for each tyre."),
            _ when draft.Slots.Count == 1 => Say($"No value yet."),
            _ => Say($"{draft.Slots.Count(s => !draft.Stands(s))} of {draft.Slots.Count} still empty."),
        };

    /// <summary>Why a point cannot be marked now.</summary>
    public static string NoMarkBecause(PointState state) =>
        state.Current?.Opinion.Verdict switch
        {
            VerdictWord.Outside => Say($"It is outside. Correct it and read it again, then it can be marked."),
            VerdictWord.Unproven when state.LacksFigure => Say(
                $"No figure judges it. Give one, then it can be marked."
            ),
            VerdictWord.Unproven => Say(
                $"It is not proven. Read it so that the instrument can tell, then it can be marked."
            ),
            _ => Say($"It is not read yet."),
        };

    public static string Readback(PointState state) =>
        state.Current is not { } now ? ""
        : now.Opinion.Shown.Length == 0 ? $"{Known(state.Point.Title)}. {Say(now.Opinion.Headline)}."
        : $"{Known(state.Point.Title)}: {Say(now.Opinion.Shown)}. {Say(now.Opinion.Headline)}.";

    public static string MarkedBy(string by) => Say($"Marked by {by}");

    public static string LeftBecause(string why) => Say($"Left as it is: {why}");
}
