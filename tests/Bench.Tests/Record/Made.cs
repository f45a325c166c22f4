using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

/// <summary>Invented entries.</summary>
internal static class Made
{
    public static JsonElement Json(string text) => JsonDocument.Parse(text).RootElement.Clone();

    public static EntryDraft Draft(
        string id,
        IReadOnlyDictionary<string, int>? covers = null,
        JsonElement? body = null
    ) =>
        new(
            id,
            "harrow-lane",
            "412",
            EntryKind.Note,
            body ?? EntryBody.Note(null, $"note {id}"),
            null,
            covers,
            "2026-03-02T09:15:00Z",
            "Ines"
        );

    /// <summary>A chain of notes; what each had seen of others is said by <paramref name="covers"/>.</summary>
    public static IReadOnlyList<Entry> Chain(
        string device,
        int count,
        Func<int, IReadOnlyDictionary<string, int>?>? covers = null
    )
    {
        var chain = new List<Entry>();
        for (var seq = 1; seq <= count; seq++)
            chain.Add(
                Entries.Sealed(
                    Draft($"{device}-{seq}", covers?.Invoke(seq)),
                    device,
                    1,
                    seq,
                    chain.LastOrDefault()?.Hash
                )
            );
        return chain;
    }
}
