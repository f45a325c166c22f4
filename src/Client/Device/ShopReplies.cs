using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Record;

namespace Witnessmark.Client.Device;

/// <summary>The shop's files, and whether it is the invented one.</summary>
internal sealed record WorkbenchReply(
    int Protocol,
    string Ledger,
    IReadOnlyList<WorkbenchFile> Files,
    bool Demo = false
)
{
    /// <summary>Names of shops that lay there before: what this device has of them is no work of this one.</summary>
    public IReadOnlyList<string> PutAway { get; init; } = [];
}

internal sealed record WorkbenchFile(string Name, string Text);

/// <summary>What the shop did with a batch.</summary>
/// <param name="Ledger">Identity of its ledger.</param>
/// <param name="UpTo">It has all of this device's entries up to this number.</param>
/// <param name="Aside">Entries that it put aside whole.</param>
internal sealed record TakenReply(string Ledger, int UpTo, IReadOnlyList<Aside>? SetAside);

/// <summary>Entries in the shop's order.</summary>
/// <param name="Ledger">Identity of its ledger.</param>
/// <param name="Head">The last order that there is.</param>
/// <param name="Entries">Each with its order.</param>
/// <param name="NotCounting">Those of them that count for nothing.</param>
internal sealed record EntriesReply(
    string Ledger,
    int Head,
    IReadOnlyList<(int Order, Entry Entry)> Entries,
    IReadOnlyList<string> NotCounting
);

/// <summary>An entry that the shop put aside.</summary>
internal sealed record Aside(string Id, int Seq, string Why, bool Conflict = false);

/// <summary>A no of the shop.</summary>
internal sealed record RefusedReply(string Error);

/// <summary>A figure on its way to the shop.</summary>
internal sealed record FigureRequest(
    int Revision,
    string Demand,
    string Printed,
    string Origin,
    string By,
    string Why,
    string? Tolerance,
    string? Unit,
    string? Also,
    string? When,
    string? Bolt
)
{
    public static FigureRequest Of(FigureSheet sheet, FigureDraft draft, string by, string why) =>
        new(
            sheet.Revision,
            draft.Demand,
            draft.Printed,
            draft.Origin,
            by,
            why,
            draft.Tolerance,
            draft.Unit,
            draft.Also,
            draft.When,
            draft.Bolt
        );
}
