namespace Witnessmark.Bench.Machines;

/// <summary>One motorcycle or quad.</summary>
/// <param name="Id">Short, unique in the shop: <c>fell-640-0412</c>.</param>
/// <param name="Name">As people call it: <c>Fell 640</c>.</param>
/// <param name="Vin">Vehicle identification number.</param>
/// <param name="Year">Model year, or null when unknown.</param>
/// <param name="Sheet">Id of its figure sheet.</param>
/// <param name="LastDistanceKilometres">Last distance on record, or null.</param>
/// <param name="LastDistanceOn">Day of that reading, or null.</param>
/// <param name="Traits">Where it is built otherwise than its sheet says: <c>winch</c> = "true"; null: nowhere.</param>
/// <param name="Make">Make, or null; campaigns are looked up by it.</param>
public sealed record Machine(
    string Id,
    string Name,
    string Vin,
    int? Year,
    string Sheet,
    double? LastDistanceKilometres,
    DateOnly? LastDistanceOn,
    IReadOnlyDictionary<string, string>? Traits = null,
    string? Make = null
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
);

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
}
