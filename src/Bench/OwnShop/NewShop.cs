namespace Witnessmark.Bench.OwnShop;

/// <summary>A shop as its people give it on three screens, every number and day as it was typed: the reader of the files judges them.</summary>
/// <param name="Name">Its name.</param>
/// <param name="People">Who works there.</param>
/// <param name="Lead">Which of them leads.</param>
public sealed record NewShop(string Name, IReadOnlyList<string> People, string Lead)
{
    /// <summary>Whose law counts, or null: nobody said.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary><c>A4</c> or <c>Letter</c>.</summary>
    public string Paper { get; init; } = "A4";

    /// <summary>Of its papers.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Its tools.</summary>
    public IReadOnlyList<NewInstrument> Instruments { get; init; } = [];

    /// <summary>The first machine, or null: later.</summary>
    public NewMachine? Machine { get; init; }
}

/// <summary>One tool.</summary>
/// <param name="Id">By which the bench book calls it: <c>steel-rule</c>.</param>
/// <param name="Name">As written on paper.</param>
/// <param name="Kind"><c>measure</c>, <c>torque</c> or <c>level</c>.</param>
/// <param name="Unit">Of its readings.</param>
/// <param name="Resolution">With its unit.</param>
/// <param name="Error">With its unit; of a torque tool a share.</param>
/// <param name="Decimals">Of its readings.</param>
public sealed record NewInstrument(
    string Id,
    string Name,
    string Kind,
    string Unit,
    string Resolution,
    string Error,
    int Decimals
)
{
    /// <summary>Lower end of its range, or null.</summary>
    public string? From { get; init; }

    /// <summary>Upper end of its range, or null.</summary>
    public string? To { get; init; }

    /// <summary>Deviation of putting it on again, or null.</summary>
    public string? Replacing { get; init; }

    /// <summary>Of a torque wrench, from square to hand, or null.</summary>
    public string? Lever { get; init; }

    /// <summary>Day of its last calibration, or null.</summary>
    public string? Checked { get; init; }

    /// <summary>How often it is calibrated, <c>never</c>, or null.</summary>
    public string? CheckEvery { get; init; }
}

/// <summary>The first machine, whose figure sheet begins empty.</summary>
/// <param name="Name">As people call it, and its sheet.</param>
/// <param name="Drive"><c>chain</c>, <c>belt</c> or <c>shaft</c>.</param>
/// <param name="Cylinders">How many.</param>
/// <param name="Facts">How it is built, by the names that figure sheets have for it.</param>
public sealed record NewMachine(string Name, string Drive, int Cylinders, IReadOnlyDictionary<string, string> Facts)
{
    /// <summary>Its VIN, or null.</summary>
    public string? Vin { get; init; }

    /// <summary>Its plate, or null.</summary>
    public string? Plate { get; init; }

    /// <summary>Its make, or null.</summary>
    public string? Make { get; init; }

    /// <summary>Its model year, or null.</summary>
    public int? Year { get; init; }
}
