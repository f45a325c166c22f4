using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace Witnessmark.Doors;

/// <summary>What is kept of a secret: the hash of ASP.NET Core Identity, PBKDF2 with HMAC-SHA-512.</summary>
/// <remarks><b>Source.</b> OWASP ASVS 5.0, appendix C.5.2: PBKDF2-HMAC-SHA-512 with 210,000 iterations or more.</remarks>
public static class SecretHash
{
    /// <summary>Rounds.</summary>
    public const int Iterations = 220_000;

    private static readonly PasswordHasher<string> Hasher = new(
        Options.Create(new PasswordHasherOptions { IterationCount = Iterations })
    );

    // somebody without a secret takes as long to refuse as somebody with one
    private static readonly Lazy<string> Nobody = new(() => Hasher.HashPassword("", Token.Drawn()));

    /// <summary>The hash of a secret.</summary>
    public static string Of(string person, string secret) => Hasher.HashPassword(person, secret);

    /// <summary>
    /// What is to be kept of a secret that has the hash, made anew where an earlier program made it weaker; null when it has not. Takes as long when there is none.
    /// </summary>
    public static string? Fits(string person, string? hash, string secret) =>
        (hash, Hasher.VerifyHashedPassword(person, hash ?? Nobody.Value, secret)) switch
        {
            (null, _) or (_, PasswordVerificationResult.Failed) => null,
            (_, PasswordVerificationResult.SuccessRehashNeeded) => Of(person, secret),
            _ => hash,
        };
}
