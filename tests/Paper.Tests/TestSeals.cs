using System.Buffers.Text;
using System.Security.Cryptography;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Tests;

/// <summary>Two workshops that sign. Their keys are published examples and protect nothing.</summary>
internal static class TestSeals
{
    /// <summary>The key of RFC 7515, A.3.1.</summary>
    public static ShopSeal Harrow { get; } =
        Of(
            "f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU",
            "x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0",
            "jpsQnnGQmL-YBIffH1136cspYG6-0iY7X1fCE9-E9LI"
        );

    /// <summary>The key of RFC 7517, A.2, first of the set.</summary>
    public static ShopSeal Quay { get; } =
        Of(
            "MKBCTNIcKUSDii11ySs3526iDZ8AiTo7Tu6KPAqv7D4",
            "4Etl6SRW2YiLUrN5vfvVHuhp7x8PxltmWWlbbM4IFyM",
            "870MB6gfuTJ4HtUnUvYMyJpr5eUZNP4Bk43bVdj3eAE"
        );

    public static KnownKeys Both { get; } = new([(Harrow.Key, "harrow"), (Quay.Key, "quay")]);

    private static ShopSeal Of(string x, string y, string d)
    {
        var point = new ECPoint { X = Base64Url.DecodeFromChars(x), Y = Base64Url.DecodeFromChars(y) };
        var parameters = new ECParameters
        {
            Curve = ECCurve.NamedCurves.nistP256,
            Q = point,
            D = Base64Url.DecodeFromChars(d),
        };
        return new(new(x, y), bytes => ECDsa.Create(parameters).SignData(bytes, HashAlgorithmName.SHA256));
    }
}
