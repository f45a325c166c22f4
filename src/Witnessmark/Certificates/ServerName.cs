using System.Net;
using System.Net.Sockets;

namespace Witnessmark.Certificates;

/// <summary>One name or address that a server is reached by, as a person types it.</summary>
public static class ServerName
{
    private const int LongestName = 253; // RFC 1035, 2.3.4: 255 octets with the lengths of the labels
    private const int LongestLabel = 63;

    /// <summary>Why a certificate of the shop cannot be for it, or null.</summary>
    public static string? Refusal(string text) =>
        text.Length == 0 ? "An empty name is none."
        : text.Any(char.IsWhiteSpace) ? $"\"{text}\" has a blank in it: give one name or address at a time."
        : text.Contains('*')
            ? $"\"{text}\": a certificate for all names below one is not made; name each that devices open."
        : text.Contains('/') || IsWithPort(text)
            ? $"\"{text}\": only the name or the address, without https:// and port."
        : LooksLikeAddress(text) ? OfAddress(text)
        : OfName(text);

    /// <summary>The address that it is, or null.</summary>
    public static IPAddress? Address(string text) =>
        IPAddress.TryParse(text, out var address) && IsWrittenOut(text, address) ? address : null;

    /// <summary>Zones and shortened or octal forms, which <see cref="IPAddress"/> would take, are left out: 192.168.010.1 is another address than it seems.</summary>
    private static bool IsWrittenOut(string text, IPAddress address) =>
        address.AddressFamily is AddressFamily.InterNetwork
            ? address.ToString() == text
            : !text.Contains('%') && !text.Contains('[');

    private static bool IsWithPort(string text) => text.Count(c => c == ':') == 1 || text.StartsWith('[');

    private static bool LooksLikeAddress(string text) =>
        text.Contains(':')
        || text.Split('.')[^1] is { Length: > 0 } last && last.All(char.IsAsciiDigit) && text.Contains('.');

    private static string? OfAddress(string text) =>
        Address(text) is not { } address
            ? $"\"{text}\" is no address: four numbers of 0 to 255 with dots, without leading zeros, or an IPv6 address."
        : OwnNetwork.Has(address) ? null
        : $"{text} is an address of the public internet, for which the shop's own authority does not vouch. A server that the internet reaches needs a certificate of a public authority: serve --certificate FILE.";

    private static string? OfName(string text)
    {
        var labels = text.Split('.');
        if (text.Length > LongestName || labels.Any(l => l.Length is 0 or > LongestLabel || !IsLabel(l)))
            return $"\"{text}\" is no name of a computer: letters a to z, digits and hyphens, in parts with dots between them (other letters in their xn-- form).";
        return labels.Length == 1 && CouldBeTopLevel(text)
            ? $"\"{text}\" alone could be a top-level domain, and the authority would vouch for all below it. Name the computer {text}.local, or something with a digit or a hyphen."
            : null;
    }

    /// <summary>RFC 1123, 2.1: letters, digits, hyphens, and no hyphen at either end.</summary>
    private static bool IsLabel(string label) =>
        label.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') && label[0] != '-' && label[^1] != '-';

    /// <summary>
    /// ICANN, gTLD Applicant Guidebook, 2.2.1.3.2: the label of a top-level domain has letters alone, or begins with xn--.
    /// RFC 5280, 4.2.1.10: who may vouch for a name may vouch for all names below it.
    /// </summary>
    private static bool CouldBeTopLevel(string label) =>
        !label.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        && (label.All(char.IsAsciiLetter) || label.StartsWith("xn--", StringComparison.OrdinalIgnoreCase));
}
