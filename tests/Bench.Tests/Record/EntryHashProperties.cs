using System.Text.Json;
using FsCheck.Xunit;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

/// <summary>The hash of any entry beside the same by another way: the entry as JSON, its hash taken out, the canonical text of what is left. RFC 8785, FIPS 180-4.</summary>
public class EntryHashProperties
{
    [Property(MaxTest = 2000)]
    public void It_is_that_of_the_canonical_text_without_the_hash(
        string? text,
        string? other,
        bool optional,
        int epoch,
        Dictionary<string, int>? covers
    )
    {
        var (a, b) = (text ?? "", other ?? "");
        var entry = new Entry(
            a,
            b,
            a + b,
            b + "\u0001\"\\" + a,
            epoch,
            epoch ^ 1,
            b,
            Made.Json(
                JsonSerializer.Serialize(new Dictionary<string, object> { [a] = b, [a + "x"] = new[] { epoch } })
            ),
            optional ? a : null,
            Counts(covers),
            b + a,
            a,
            optional ? null : b,
            "not of it"
        );
        Assert.Equal(EntryHash.OfText(CanonicalJson.Of(WithoutHash(EntryJson.Write(entry)))), EntryHash.Of(entry));
        if (entry.Covers is { } seen)
            Assert.Equal(CanonicalJson.Of(EntryJson.Write(entry).GetProperty("covers")), CanonicalJson.Of(seen));
    }

    private static Dictionary<string, int>? Counts(Dictionary<string, int>? drawn) =>
        drawn?.ToDictionary(c => c.Key, c => c.Value, StringComparer.Ordinal);

    private static JsonElement WithoutHash(JsonElement entry) =>
        JsonSerializer.SerializeToElement(
            entry.EnumerateObject().Where(m => m.Name != "hash").ToDictionary(m => m.Name, m => m.Value)
        );
}
