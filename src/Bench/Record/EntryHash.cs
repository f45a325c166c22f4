using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Bench.Record;

/// <summary>What binds an entry: whoever changes one character of it changes this.</summary>
/// <remarks>
/// <para><b>Formula.</b> SHA-256 (FIPS 180-4) of the UTF-8 bytes of the entry's canonical JSON without the field
/// <c>hash</c>, in lower-case hex. The field <c>devicePrevious</c> is within, so each hash holds the whole chain before it.</para>
/// </remarks>
public static class EntryHash
{
    /// <summary>The hash that the entry should carry.</summary>
    public static string Of(Entry entry) => OfText(UnsealedText.Of(entry));

    /// <summary>SHA-256 of a text's UTF-8 bytes in lower-case hex.</summary>
    public static string OfText(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
