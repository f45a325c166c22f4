using System.Buffers;
using System.Buffers.Text;

namespace Witnessmark.Doors;

/// <summary>Bytes as base64url (RFC 4648, section 5), from somebody who may write anything.</summary>
internal static class Coded
{
    /// <summary>The bytes; null when it is not so many, or no base64url.</summary>
    public static byte[]? Bytes(string text, int count)
    {
        var bytes = new byte[count];
        return
            Base64Url.DecodeFromChars(text, bytes, out _, out var written) == OperationStatus.Done && written == count
            ? bytes
            : null;
    }
}
