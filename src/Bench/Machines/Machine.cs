using Witnessmark.Bench.Stock;

namespace Witnessmark.Bench.Machines;

/// <summary>One motorcycle or quad.</summary>
/// <param name="Id">Short, unique in the shop: <c>fell-640-0412</c>.</param>
/// <param name="Name">As people call it: <c>Fell 640</c>.</param>
/// <param name="Vin">Vehicle identification number; empty when none is known.</param>
/// <param name="Year">Model year, or null when unknown.</param>
/// <param name="Sheet">Id of its figure sheet.</param>
/// <param name="LastDistanceKilometres">Last distance on record, or null.</param>
/// <param name="LastDistanceOn">Day of that reading, or null.</param>
/// <param name="Traits">Where it is built otherwise than its sheet says: <c>winch</c> = "true"; null: nowhere.</param>
/// <param name="Make">Make, or null; campaigns are looked up by it.</param>
/// <param name="Frame">Number on a frame that has no VIN, or null.</param>
/// <param name="Plate">Registration, or null.</param>
public sealed record Machine(
    string Id,
    string Name,
    string Vin,
    int? Year,
    string Sheet,
    double? LastDistanceKilometres,
    DateOnly? LastDistanceOn,
    IReadOnlyDictionary<string, string>? Traits = null,
    string? Make = null,
    string? Frame = null,
    string? Plate = null
);

/// <summary>An instrument or tool of the shop.</summary>
/// <param name="Id"><c>steel-rule</c>.</param>
/// <param name="Name">As written on paper.</param>
/// <param name="Unit">Unit of its resolution and error; its readings may come in any unit of that dimension.</param>
/// <param name="Resolution">Smallest step read, in <paramref name="Unit"/>.</param>
/// <param name="PermissibleError">Half-width of its error, in <paramref name="Unit"/>; for a torque wrench a fraction.</param>
/// <param name="Replacing">Standard deviation of putting it on again, in <paramref name="Unit"/>; counts where nothing is repeated; zero when none is known.</param>
/// <param name="Decimals">Decimals that its readings are written with.</param>
/// <param name="Checked">Day of its last calibration, or null.</param>
/// <param name="Kind"><c>measure</c>, <c>torque</c> or <c>level</c>.</param>
/// <param name="Min">Lower end of its range, in <paramref name="Unit"/>; null when none is known.</param>
/// <param name="Max">Upper end of its range, in <paramref name="Unit"/>; null when none is known.</param>
public sealed record ShopInstrument(
    string Id,
    string Name,
    Handbook.Quantities.Unit Unit,
    double Resolution,
    double PermissibleError,
    double Replacing,
    int Decimals,
    DateOnly? Checked,
    string Kind,
    double? Min = null,
    double? Max = null
)
{
    /// <summary>Last day on which its calibration holds, or null when nobody said.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>The shop checks it never: it belongs to the machine, or nothing about it can drift.</summary>
    public bool NeverChecked { get; init; }

    /// <summary>The shop lets it prove no safety point while no date of its calibration is on record.</summary>
    public bool DateNeeded { get; init; }

    /// <summary>Of a torque wrench: from the drive square to the middle of the hand; null when nobody measured it.</summary>
    public Handbook.Quantities.Length? Lever { get; init; }
}

/// <summary>The workshop: its name, people, instruments and machines.</summary>
public sealed record Workshop(
    string Id,
    string Name,
    IReadOnlyList<string> People,
    IReadOnlyDictionary<string, ShopInstrument> Instruments,
    IReadOnlyDictionary<string, Machine> Machines
)
{
    /// <summary>Opening hours, or null when the shop says none; without them there is no day plan.</summary>
    public Day.Hours? Hours { get; init; }

    /// <summary>Places at which one machine at a time is worked on.</summary>
    public IReadOnlyList<string> Lifts { get; init; } = [];

    /// <summary>The people with their skills and hours.</summary>
    public IReadOnlyList<ShopTechnician> Technicians { get; init; } = [];

    /// <summary>Adapters of the torque wrenches, by id.</summary>
    public IReadOnlyDictionary<string, WrenchAdapter> Adapters { get; init; } = new Dictionary<string, WrenchAdapter>();

    /// <summary>What is kept on the shelf, by id.</summary>
    public IReadOnlyDictionary<string, StockItem> Stock { get; init; } = new Dictionary<string, StockItem>();

    /// <summary>The place whose law counts in this shop, or null when it does not say.</summary>
    public Jurisdiction? Jurisdiction { get; init; }

    /// <summary>Who may decide on what somebody's safety hangs on; empty: nobody was named.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>Who may look at everything and change nothing: an accountant, a customer's inspector.</summary>
    public IReadOnlyList<string> Readers { get; init; } = [];

    /// <summary>Whether a machine leaves only with the signatures of two people.</summary>
    public bool ReleaseByTwo { get; init; }

    /// <summary>What its sheets are printed on, <c>A4</c> or <c>Letter</c>; A4 when the shop says nothing.</summary>
    public string Paper { get; init; } = WorkshopFile.Papers[0];

    /// <summary>Code of the language that its papers are in.</summary>
    public string Language { get; init; } = WorkshopFile.Languages[0];

    /// <summary>Word of the units that its papers are in.</summary>
    public string Units { get; init; } = WorkshopFile.UnitWords[0];

    /// <summary>The label that it sticks on machines and keys; the first of the usual ones when the shop says nothing.</summary>
    public string Label { get; init; } = WorkshopFile.Labels[0];

    /// <summary>From when on a plan asks for a point.</summary>
    public Planning.PlanSettings Planning { get; init; } = Witnessmark.Bench.Planning.PlanSettings.Usual;

    /// <summary>What an hour costs, in which currency and with which tax; null where the shop does not say: then nothing is estimated.</summary>
    public Findings.EstimateTerms? Estimates { get; init; }

    /// <summary>Which points a second person reads again, blind.</summary>
    public SecondChecks.SecondCheckRule SecondCheck { get; init; } = SecondChecks.SecondCheckRule.None;

    /// <summary>Whether an instrument without a date of calibration proves no safety point here.</summary>
    public bool InstrumentsNeedDates { get; init; }

    /// <summary>Whether a name is that of a lead.</summary>
    public bool IsLead(string? name) => Leads.Contains(name, StringComparer.OrdinalIgnoreCase);
}
