using System.Text.Json;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>JSON whose text is no text: bytes that are not UTF-8, or half of a surrogate pair as an escape.</summary>
/// <remarks>The parser lets it through and complains only when the text is read, as if its caller had a bug.</remarks>
public static class BrokenText
{
    /// <summary>What to say to it.</summary>
    public const string Complaint =
        "The request holds text that is not valid Unicode; allowed: UTF-8 and whole escapes.";

    /// <summary>Whether there is any, at whatever depth.</summary>
    public static bool In(JsonElement element)
    {
        try
        {
            return element.ValueKind switch
            {
                JsonValueKind.Object => element.EnumerateObject().Any(p => p.Name.Length < 0 || In(p.Value)),
                JsonValueKind.Array => element.EnumerateArray().Any(In),
                JsonValueKind.String => element.GetString() is null,
                _ => false,
            };
        }
        catch (InvalidOperationException)
        {
            return true;
        }
    }
}
