using Witnessmark.Bench.Record;

namespace Witnessmark.Tests.Serve;

/// <summary>Invented notes of one device.</summary>
internal static class Notes
{
    public static IReadOnlyList<Entry> Chain(int count)
    {
        var chain = new List<Entry>();
        for (var seq = 1; seq <= count; seq++)
            chain.Add(Next("bench", seq, chain.LastOrDefault()?.Hash));
        return chain;
    }

    /// <summary>The next entry of a device.</summary>
    public static Entry Next(string device, int seq, string? previous) =>
        Entries.Sealed(Draft(device, seq), device, 1, seq, previous);

    private static EntryDraft Draft(string device, int seq) =>
        new(
            $"{device}-{seq}",
            "harrow-lane",
            "412",
            EntryKind.Note,
            EntryBody.Note(null, $"note {seq}: 24.4 mm, ½ turn"),
            null,
            null,
            "2026-03-02T09:15:00Z",
            "Ines Tallow"
        );
}
