using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace Witnessmark.Doors;

/// <summary>What is kept of a secret: the hash of ASP.NET Core Identity, PBKDF2 with HMAC-SHA-512.</summary>
/// <remarks><b>Source.</b> OWASP ASVS 5.0, appendix C.5.2: PBKDF2-HMAC-SHA-512 with 210,000 iterations or more.</remarks>
public static class SecretHash
{
    private const int Iterations = 220_000;

    private static readonly PasswordHasher<string> Hasher = new(
        Options.Create(new PasswordHasherOptions { IterationCount = Iterations })
    );

    // somebody without a secret takes as long to refuse as somebody with one
    private static readonly Lazy<string> Nobody = new(() => Hasher.HashPassword("", Token.Drawn()));

    /// <summary>The hash of a secret.</summary>
    public static string Of(string person, string secret) => Hasher.HashPassword(person, secret);

    /// <summary>Whether a secret has the hash; takes as long when there is none.</summary>
    public static bool Fits(string person, string? hash, string secret) =>
        Hasher.VerifyHashedPassword(person, hash ?? Nobody.Value, secret) != PasswordVerificationResult.Failed
        && hash is not null;
}
