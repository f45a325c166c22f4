using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.SecondChecks;

namespace Witnessmark.Bench.Jobs;

/// <summary>The state of one job: a pure function of its entries and of the workbench they were made at.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Arrival">What opened it, or null while that entry has not come.</param>
/// <param name="Points">In bench order.</param>
/// <param name="Holds">What keeps it from leaving; empty: it may go.</param>
/// <param name="Release">The signature that stands, or null.</param>
/// <param name="Notes">Notes that belong to no point, in order.</param>
/// <param name="NotUnderstood">Entries that are kept but say nothing that this program understands, with the reason.</param>
/// <param name="Entries">All of them, in the order of the fold.</param>
public sealed record JobState(
    string Job,
    Arrival? Arrival,
    IReadOnlyList<PointState> Points,
    IReadOnlyList<Hold> Holds,
    Release? Release,
    IReadOnlyList<Note> Notes,
    IReadOnlyList<(Entry Entry, Sentence Why)> NotUnderstood,
    IReadOnlyList<Entry> Entries
)
{
    /// <summary>Points that were taken out of the plan, in order.</summary>
    public IReadOnlyList<DroppedPoint> Dropped { get; init; } = [];

    /// <summary>Campaigns that were settled on this job, each number once, as it was settled last.</summary>
    public IReadOnlyList<CampaignSettled> CampaignsDone { get; init; } = [];

    /// <summary>"Do not ride" campaigns that somebody lets the machine leave with, each number once, as it was decided last.</summary>
    public IReadOnlyList<CampaignLeft> CampaignsLeft { get; init; } = [];

    /// <summary>Campaigns that were found at arrival and are not settled; null when none were looked up then.</summary>
    public IReadOnlyList<FoundCampaign>? CampaignsOpen =>
        Arrival?.Campaigns is { } found ? OpenCampaigns.Of(found, CampaignsDone.Select(c => c.Number)) : null;

    /// <summary>What was said last about when: promise, parts, place in the day plan.</summary>
    public JobDay Day { get; init; } = new(null, null, null);

    /// <summary>What was photographed, in order.</summary>
    public IReadOnlyList<Photograph> Photographs { get; init; } = [];

    /// <summary>What there is to tell the owner, in the order in which it was found.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Entries that are kept and say nothing here: the shop was not shown whose word they count by.</summary>
    public IReadOnlyList<Entry> NotCounting { get; init; } = [];

    /// <summary>Whether the machine may go.</summary>
    public bool MayGo => Holds.Count == 0;

    /// <summary>Who signed, while the signature of a second person is missing; null else.</summary>
    public string? SignedFirst { get; init; }
}

/// <summary>How the job began. Its campaigns are null when they were not looked up.</summary>
public sealed record Arrival(
    Machine Machine,
    FigureSheet Sheet,
    string Purpose,
    string? Promised,
    string At,
    string By,
    IReadOnlyList<FoundCampaign>? Campaigns = null
);

/// <summary>A campaign that was settled.</summary>
public sealed record CampaignSettled(Entry Entry, string Number, CampaignOutcome Outcome, string? Why);

/// <summary>A "do not ride" campaign that is left open by decision of the entry's writer.</summary>
public sealed record CampaignLeft(Entry Entry, string Number, string Why);

/// <summary>A point that was taken out of the plan, by whom and why, and the lead who stands for it where safety hangs on it.</summary>
public sealed record DroppedPoint(Point Point, Entry Entry, string Why, string? Lead);

/// <summary>One point of the job.</summary>
/// <param name="Point">From the bench book.</param>
/// <param name="Why">Why it is in the plan.</param>
/// <param name="Figure">The figure that judges it, or null.</param>
/// <param name="Stripe">Its state as the drawing shows it.</param>
/// <param name="Readings">Unstruck readings in order, with their verdicts as they were.</param>
/// <param name="Corrections">Unstruck corrections in order.</param>
/// <param name="Current">The reading that counts now; null when not read or when later work asks for it again.</param>
/// <param name="Advice">What to do about it, or what was learnt; null when there is nothing to say.</param>
/// <param name="Marked">The mark that stands, or null.</param>
/// <param name="Left">The decision to leave it, or null.</param>
/// <param name="AgainBecause">Why it has to be read again; empty when it has not.</param>
/// <param name="Notes">Notes on it.</param>
public sealed record PointState(
    Point Point,
    string Why,
    Figure? Figure,
    Stripe Stripe,
    IReadOnlyList<ReadingTaken> Readings,
    IReadOnlyList<CorrectionMade> Corrections,
    ReadingTaken? Current,
    Advice? Advice,
    Entry? Marked,
    (Entry Entry, string Why)? Left,
    IReadOnlyList<Sentence> AgainBecause,
    IReadOnlyList<Note> Notes
)
{
    /// <summary>The figure where it was given at the bench rather than by the sheet, or null.</summary>
    public GivenFigure? Given { get; init; }

    /// <summary>Figures that were given at the same time and differ: none of them judges.</summary>
    public IReadOnlyList<GivenFigure> Disputed { get; init; } = [];

    /// <summary>Who vouches for the figure that judges it, or null.</summary>
    public Vouched? Vouched { get; init; }

    /// <summary>How the second check stands; null where the shop asks for none here.</summary>
    public SecondCheck? Second { get; init; }

    /// <summary>Whether somebody has to vouch for its figure: a safety point that neither maker nor law nor standard judges.</summary>
    public bool NeedsVouching => Vouching.IsNeeded(Point, Figure);

    /// <summary>Whether a number is held against a figure here and there is none.</summary>
    public bool LacksFigure => Figure is null && Point is { JudgedBy: not null, Reading.JudgedIn: not null };

    /// <summary>Whether a mark would be accepted now.</summary>
    public bool CanBeMarked =>
        Marked is null && Current is { Opinion.Verdict: VerdictWord.Inside or VerdictWord.Close };

    /// <summary>What was first read here in this job, or null.</summary>
    public ReadingTaken? Found => Readings.Count > 0 ? Readings[0] : null;
}

/// <summary>The states of the stripe.</summary>
public enum Stripe
{
    /// <summary>Two empty halves.</summary>
    Unread,

    /// <summary>Read and inside, the mark still to be made: a thin chalk line.</summary>
    Inside,

    /// <summary>Read and close, the mark still to be made: a thin chalk line with a gap at the end.</summary>
    Close,

    /// <summary>Broken and shifted.</summary>
    Outside,

    /// <summary>Hatched.</summary>
    Unproven,

    /// <summary>Whole.</summary>
    Marked,

    /// <summary>Whole with a gap at the end.</summary>
    MarkedClose,

    /// <summary>Whole, crossed by a hairline: read again.</summary>
    Again,

    /// <summary>Empty halves joined by a dash: left as it is by decision.</summary>
    Left,
}

/// <summary>One reading with the verdict on it.</summary>
/// <param name="Entry">The fact.</param>
/// <param name="Raw">As typed, with units.</param>
/// <param name="Places">Names of the places, in step with <paramref name="Raw"/>; empty when there is one place.</param>
/// <param name="Instrument">What it was read with, or null.</param>
/// <param name="Opinion">The verdict and its grounds.</param>
public sealed record ReadingTaken(
    Entry Entry,
    IReadOnlyList<string> Raw,
    IReadOnlyList<string> Places,
    ShopInstrument? Instrument,
    Opinion Opinion
);

/// <summary>One correction that was made.</summary>
/// <param name="Entry">The fact.</param>
/// <param name="Left">Turns of the left (or only) adjuster, tightening positive; null when no adjuster was turned.</param>
/// <param name="Right">Turns of the right adjuster; equal to the left one when both were turned together.</param>
/// <param name="AddedLitres">Fluid added, or null.</param>
/// <param name="Words">In a short sentence: <c>both adjusters 2 turns tighter</c>.</param>
public sealed record CorrectionMade(Entry Entry, double? Left, double? Right, double? AddedLitres, Sentence Words);

/// <summary>One thing that keeps the job from leaving.</summary>
/// <param name="Point">The point, or null for the job as a whole.</param>
/// <param name="Stripe">Its state.</param>
/// <param name="Words">What is missing: <c>Chain slack, lower run: outside by 18 mm</c>.</param>
public sealed record Hold(string? Point, Stripe Stripe, Sentence Words)
{
    /// <summary>The finding that holds it, or null.</summary>
    public string? Finding { get; init; }
}

/// <summary>A note in somebody's words.</summary>
public sealed record Note(Entry Entry, string Text);

/// <summary>A release that stands.</summary>
/// <param name="Entry">The last signature.</param>
/// <param name="Name">Who signed first.</param>
/// <param name="Second">Who signed after them; null where one signature is enough.</param>
public sealed record Release(Entry Entry, string Name, string? Second = null)
{
    /// <summary>All who signed, in words.</summary>
    public Sentence Names => Second is null ? Sentence.Of(Name) : (Sentence)$"{Name} and {Second}";
}
