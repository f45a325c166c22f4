using System.Globalization;
using System.Text;

namespace Witnessmark.Bench.Record;

/// <summary>What the hash of an entry is made of: its canonical JSON without the hash.</summary>
/// <remarks>
/// Written in one go, the fields in their canonical order, since every entry is hashed where it is made and where it comes in; what that gains beside a JSON document in between is among the benchmarks (<c>append</c>).
/// The tests hold it against that way.
/// </remarks>
internal static class UnsealedText
{
    public static string Of(Entry entry)
    {
        var text = new StringBuilder("{", 512);
        Member(text, "at", entry.At);
        Name(text, "body");
        CanonicalJson.Append(text, entry.Body);
        Member(text, "by", entry.By);
        Covers(text, entry.Covers);
        Member(text, "device", entry.Device);
        Member(text, "devicePrevious", entry.DevicePrevious);
        Member(text, "epoch", entry.Epoch);
        Member(text, "id", entry.Id);
        Member(text, "job", entry.Job);
        Member(text, "kind", entry.Kind);
        Member(text, "seq", entry.Seq);
        Member(text, "shop", entry.Shop);
        Member(text, "strikes", entry.Strikes);
        return text.Append('}').ToString();
    }

    private static void Covers(StringBuilder text, IReadOnlyDictionary<string, int>? covers)
    {
        if (covers is null)
            return;
        Name(text, "covers");
        CanonicalJson.Append(text, covers);
    }

    private static void Member(StringBuilder text, string name, string? value)
    {
        if (value is null)
            return;
        Name(text, name);
        CanonicalJson.Append(text, value);
    }

    private static void Member(StringBuilder text, string name, int value)
    {
        Name(text, name);
        text.Append(CultureInfo.InvariantCulture, $"{value}");
    }

    private static void Name(StringBuilder text, string name)
    {
        if (text[^1] != '{')
            text.Append(',');
        CanonicalJson.Append(text, name);
        text.Append(':');
    }
}
