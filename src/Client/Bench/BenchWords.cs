using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;

namespace Witnessmark.Client.Bench;

/// <summary>Words of the bench screen.</summary>
internal static class BenchWords
{
    public const string LowestMark = "Lowest mark";
    public const string HighestMark = "Highest mark";
    public const string Left = "Left";
    public const string Right = "Right";
    public const string DateCode = "Date code";
    public const string Percent = "Percent";
    public const string NoInstrument = "No instrument chosen";
    public const string With = "Read with";
    public const string Wrench = "Wrench";
    public const string NotOffered = "Not offered here:";
    public const string Save = "Save reading";
    public const string SavedHere = "Saved here.";
    public const string BothAgain = "Another reading of both sides";
    public const string OnceMore = "Another reading of the same";
    public const string RightWord = "Right";
    public const string NotRight = "Not right";
    public const string AllRight = "All of them are right";
    public const string Done = "Done";
    public const string ReadAgain = "Read again";
    public const string Cancel = "Back";
    public const string Mark = "Mark";
    public const string MarkWhy = "Paint the stripe, then mark.";
    public const string Corrected = "Correction made";
    public const string Note = "Note";
    public const string Leave = "Leave as it is";
    public const string Undo = "Take back the last entry";
    public const string Next = "Next point";
    public const string AllPoints = "All points of this job";
    public const string Overview = "To the job";
    public const string Again = "Read it again";
    public const string Caution = "Caution";
    public const string MakersFirst =
        "The maker's manual, local law and a qualified technician's judgement come first.";
    public const string Sure = "I am sure";
    public const string TypeAgain = "Type it again";
    public const string Correction = "What was done";
    public const string Tighter = "tighter";
    public const string Back = "back";
    public const string BothAdjusters = "Both adjusters";
    public const string Adjuster = "Adjuster";
    public const string LeftAdjuster = "Left adjuster";
    public const string RightAdjuster = "Right adjuster";
    public const string Added = "Added";
    public const string SaveCorrection = "Save correction";
    public const string SaveNote = "Save note";
    public const string NoteLabel = "Note on this point";
    public const string LeaveWhy = "Why is it left as it is?";
    public const string SaveLeave = "Leave it";
    public const string UndoWhy = "Why is it taken back?";
    public const string SaveUndo = "Take it back";
    public const string WroteWhat = "The last entry made on this device:";
    public const string NothingToUndo = "This device has made no entry in this job that could be taken back.";
    public const string OwnWords = "In your own words";
    public const string WordsMissing = "Write a few words first.";
    public const string Earlier = "Done here so far";
    public const string NoSuchPoint = "This job has no such point";
    public const string NoSuchJob = "No such job on this device";
    public const string Figure = "Figure";
    public const string SetTo = "Set the wrench to";
    public const string BelowLow = "Below low";
    public const string Low = "Low";
    public const string High = "High";
    public const string Over = "Over";
    public const string OrPercent = "Type percent";

    public static readonly IReadOnlyList<string> UndoReasons = ["Typed wrong", "Read wrong", "Wrong point"];

    public static readonly IReadOnlyList<string> LeaveReasons =
    [
        "The owner decided so",
        "Part is on order",
        "Not on this machine",
    ];

    public static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    public static string OneLabel(ReadingKind kind) =>
        kind switch
        {
            ReadingKind.Tighten => "Clicked at",
            ReadingKind.Amount => "Put in",
            ReadingKind.Level => "Level between the marks",
            ReadingKind.Vin => "Number on the frame",
            _ => "Reading",
        };

    public static string ChooseInstrument(ReadingKind kind) =>
        kind == ReadingKind.Tighten ? "Which wrench?" : "Read with what?";

    public static string RoundAt(int at, int all) => $"Reading {at} of {all}";

    public static string TurnOn(string? step) =>
        step is null ? "Turn it on, then read." : $"Turn the wheel {step} on, then read.";

    public static string StartRound(string? step) =>
        step is null ? "Read at the chalk mark." : "Begin at the chalk mark.";

    public static string NextBox(string label) => $"Next: {char.ToLowerInvariant(label[0])}{label[1..]}";

    public static string Clicked(string setting) => $"It clicked at {setting}";

    public static string Poured(string amount) => $"{amount} went in";

    public static string Meant(string value) => $"It is {value}";

    public static string IsSure(string value) => $"It really is {value}";

    public static string Missing(ReadingDraft draft) =>
        draft.Point.Reading.Kind switch
        {
            ReadingKind.Seen => $"{draft.Slots.Count(s => s.Text.Length == 0)} not answered yet.",
            ReadingKind.Vin => $"{draft.Slots[0].Text.Length} of 17 characters.",
            ReadingKind.TyreDate => "Three or four digits for each tyre.",
            _ when draft.Slots.Count == 1 => "No value yet.",
            _ => $"{draft.Slots.Count(s => !draft.Stands(s))} of {draft.Slots.Count} still empty.",
        };

    /// <summary>Why a point cannot be marked now.</summary>
    public static string NoMarkBecause(PointState state) =>
        state.Current?.Opinion.Verdict switch
        {
            VerdictWord.Outside => "It is outside. Correct it and read it again, then it can be marked.",
            VerdictWord.Unproven when state.LacksFigure => "No figure judges it. Give one, then it can be marked.",
            VerdictWord.Unproven => "It is not proven. Read it so that the instrument can tell, then it can be marked.",
            _ => "It is not read yet.",
        };

    public static string Readback(PointState state) =>
        state.Current is not { } now ? ""
        : now.Opinion.Shown.Length == 0 ? $"{state.Point.Title}. {now.Opinion.Headline}."
        : $"{state.Point.Title}: {now.Opinion.Shown}. {now.Opinion.Headline}.";

    public static string MarkedBy(string by) => $"Marked by {by}";

    public static string LeftBecause(string why) => $"Left as it is: {why}";
}
