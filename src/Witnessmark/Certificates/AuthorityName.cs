using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>What an authority is called in the lists of a device: by its shop, and by a short id that tells it from one made later.</summary>
internal static class AuthorityName
{
    /// <summary>X.520, upper bounds of common name and organization, as RFC 5280, appendix A.1 gives them.</summary>
    public const int Longest = 64;

    private const int IdBytes = 4;

    public static X500DistinguishedName Of(string shop)
    {
        var end = $" authority {Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes))}";
        var name = new X500DistinguishedNameBuilder();
        name.AddOrganizationName(Cut(shop, Longest));
        name.AddCommonName(Cut(shop, Longest - end.Length) + end);
        return name.Build();
    }

    /// <summary>Never through the middle of a letter of two halves.</summary>
    private static string Cut(string text, int longest)
    {
        if (text.Length <= longest)
            return text;
        var at = char.IsHighSurrogate(text[longest - 1]) ? longest - 1 : longest;
        return text[..at].TrimEnd();
    }
}
