using Witnessmark.Bench.Record;

namespace Witnessmark.Tests.Serve;

/// <summary>Invented notes of one device.</summary>
internal static class Notes
{
    public static IReadOnlyList<Entry> Chain(int count)
    {
        var chain = new List<Entry>();
        for (var seq = 1; seq <= count; seq++)
            chain.Add(Entries.Sealed(Draft(seq), "bench", 1, seq, chain.LastOrDefault()?.Hash));
        return chain;
    }

    private static EntryDraft Draft(int seq) =>
        new(
            $"bench-{seq}",
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
