using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>One thing on the machine that is looked at, measured, corrected or tightened.</summary>
/// <param name="Id"><c>chain-slack</c>.</param>
/// <param name="Region">The file it stands in: <c>final-drive</c>.</param>
/// <param name="Title">As a heading.</param>
/// <param name="Safety">Whether it keeps the job from leaving until proven and can never be left.</param>
/// <param name="Reach">States the machine must be in.</param>
/// <param name="Reading">How it is read.</param>
/// <param name="JudgedBy">Key of the figure that judges it, or null.</param>
/// <param name="CorrectedBy">Name of the calculation that corrects it, or null.</param>
/// <param name="Hands">Hands-on time.</param>
/// <param name="Waits">Unattended time afterwards; zero when none.</param>
/// <param name="AgainAfter">Points whose work breaks the mark made here before.</param>
/// <param name="Caution">The usual caution, or null.</param>
/// <param name="Consumables">What it uses up.</param>
/// <param name="Settings">Parameters of its correction that are the workshop's, as text by name: <c>retained</c> = "0.10 L".</param>
/// <param name="OnlyFor">Which machines have it.</param>
/// <param name="After">Points that come first where a plan has both: order that is safety.</param>
/// <param name="AsksAgain">Points whose marks work done here breaks; the same as to be named in their <paramref name="AgainAfter"/>.</param>
/// <param name="Figures">Keys of further figures that are looked up here.</param>
/// <param name="Calculation">Name of a calculation of the handbook that makes something of the reading, or null.</param>
public sealed record Point(
    string Id,
    string Region,
    string Title,
    bool Safety,
    IReadOnlyList<string> Reach,
    ReadingForm Reading,
    string? JudgedBy,
    string? CorrectedBy,
    TimeSpan Hands,
    TimeSpan Waits,
    IReadOnlyList<string> AgainAfter,
    string? Caution,
    IReadOnlyList<Consumable> Consumables,
    IReadOnlyDictionary<string, string> Settings,
    OnlyFor OnlyFor,
    IReadOnlyList<string> After,
    IReadOnlyList<string> AsksAgain,
    IReadOnlyList<string> Figures,
    string? Calculation
)
{
    /// <summary>Points whose work breaks the mark made here where this job put in a new part of the same name, for a new part settles.</summary>
    public IReadOnlyList<string> SettlesAfter { get; init; } = [];

    /// <summary>What whoever does it must be able to do, as the shop's people say it; null: anybody.</summary>
    public string? Skill { get; init; }
}

/// <summary>What a reading of a point consists of.</summary>
public enum ReadingKind
{
    /// <summary>One value, or repeats of it.</summary>
    Value,

    /// <summary>Two marks on a rule; their distance counts.</summary>
    Marks,

    /// <summary>Left against right, each once or repeated.</summary>
    Sides,

    /// <summary>One value at each named place; the worst counts.</summary>
    Places,

    /// <summary>Values round something that turns; their spread counts.</summary>
    Round,

    /// <summary>A level between two marks, 0 at the low one, 1 at the high one.</summary>
    Level,

    /// <summary>Things to be seen, each right or not.</summary>
    Seen,

    /// <summary>A fastener tightened with a tool at a setting.</summary>
    Tighten,

    /// <summary>An amount put in, or a time.</summary>
    Amount,

    /// <summary>Something done.</summary>
    Done,

    /// <summary>The vehicle identification number.</summary>
    Vin,

    /// <summary>Date codes of tyres, one at each place.</summary>
    TyreDate,
}

/// <summary>How a point is read.</summary>
/// <param name="Kind">What it consists of.</param>
/// <param name="Unit">Unit of the values, or null where there are none.</param>
/// <param name="Words">What to do, in plain words.</param>
/// <param name="Places">Names of the places, or the things to be seen.</param>
/// <param name="Count">How many readings round; 0 elsewhere.</param>
/// <param name="Step">How far apart round, e.g. <c>9 links</c>; null elsewhere.</param>
/// <param name="Instrument">Id of the instrument usually taken, or null.</param>
/// <param name="PlausibleMin">Below this in <paramref name="Unit"/> a value makes no sense; null when unknown.</param>
/// <param name="PlausibleMax">Above this a value makes no sense; null when unknown.</param>
public sealed record ReadingForm(
    ReadingKind Kind,
    Unit? Unit,
    string Words,
    IReadOnlyList<string> Places,
    int Count,
    string? Step,
    string? Instrument,
    double? PlausibleMin,
    double? PlausibleMax
)
{
    /// <summary>Whether reading it is itself work that moves its neighbours: a tightening, a filling, a thing done.</summary>
    public bool IsWork => Kind is ReadingKind.Tighten or ReadingKind.Done or ReadingKind.Amount;

    /// <summary>Whether a number is held against a figure.</summary>
    public bool IsJudgedByNumber => Kind != ReadingKind.Amount && JudgedIn is not null;

    /// <summary>What the figure that judges it has to measure; null when no number is judged.</summary>
    public Dimension? JudgedIn => Kind == ReadingKind.TyreDate ? Dimension.Duration : Unit?.Dimension;

    /// <summary>The unit it is read in, in words.</summary>
    public string ReadIn => Kind == ReadingKind.TyreDate ? "day" : $"{Unit}";
}
