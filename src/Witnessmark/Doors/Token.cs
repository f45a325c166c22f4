using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Doors;

/// <summary>Values that nobody guesses, and the hashes by which they are known again.</summary>
public static class Token
{
    // no 0 O 1 I L: it is read from one screen and typed on another
    private const string CodeLetters = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    private const int CodeLength = 10;

    /// <summary>A session's: 256 bits.</summary>
    public static string Drawn() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32));

    /// <summary>A code for one use: ten signs of 31, some 49 bits, good for minutes or a day, and rate limited.</summary>
    public static string Code() => RandomNumberGenerator.GetString(CodeLetters, CodeLength);

    /// <summary>A code as people see it: in two halves.</summary>
    public static string Shown(string code) => $"{code[..(CodeLength / 2)]}-{code[(CodeLength / 2)..]}";

    /// <summary>A code as it was drawn, however it was typed.</summary>
    public static string Typed(string code) => string.Concat(code.ToUpperInvariant().Where(CodeLetters.Contains));

    /// <summary>What is kept of a code: it is short, so whoever has the file has to be slow in trying. The shop's own key is the salt.</summary>
    /// <remarks><b>Source.</b> OWASP ASVS 5.0, 6.5.2 and appendix C.5.2: a password's hash with a salt of 32 bits or more where a code has less than 112.</remarks>
    public static string SlowHash(string code, byte[] salt) =>
        Convert.ToHexStringLower(
            Rfc2898DeriveBytes.Pbkdf2(code, salt, SecretHash.Iterations, HashAlgorithmName.SHA512, 32)
        );

    /// <summary>What is kept of one that nobody could try out.</summary>
    public static string Hash(string token) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)));
}
