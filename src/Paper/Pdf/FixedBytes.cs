using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Witnessmark.Paper.Pdf;

/// <summary>Takes out of a finished PDF what the writer draws by chance or from the clock, without moving a byte: same sheet, same file.</summary>
internal static partial class FixedBytes
{
    /// <summary>The file with all dates set to one day and all chance names counted.</summary>
    public static byte[] Of(byte[] pdf, DateOnly day)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var tags = new Dictionary<string, string>();
        text = SubsetTag().Replace(text, m => "/" + Counted(tags, m.Groups[1].Value) + "+");
        text = Uuid().Replace(text, "uuid:00000000-0000-4000-8000-000000000000");
        text = InfoDate().Replace(text, day.ToString("'(D:'yyyyMMdd", CultureInfo.InvariantCulture) + "000000+00'00')");
        return Encoding.Latin1.GetBytes(text);
    }

    /// <summary>AAAAAA, AAAAAB and so on in the order of appearance.</summary>
    private static string Counted(Dictionary<string, string> tags, string tag)
    {
        if (!tags.TryGetValue(tag, out var counted))
            tags[tag] = counted = "AAAAA" + (char)('A' + tags.Count);
        return counted;
    }

    [GeneratedRegex("/([A-Z]{6})\\+(?=Atkinson)")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")]
    private static partial Regex Uuid();

    [GeneratedRegex("\\(D:[0-9]{14}[+-][0-9]{2}'[0-9]{2}'\\)")]
    private static partial Regex InfoDate();
}
