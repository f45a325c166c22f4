using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>A password as the store keeps it, reckoned here: so the password itself stands in no statement and in no log of the store.</summary>
/// <remarks><b>Source.</b> RFC 5802, 3 (StoredKey, ServerKey), RFC 7677 (SHA-256); PostgreSQL 15 documentation, 53.8 <c>pg_authid</c> (how it is written).</remarks>
internal static class ScramSecret
{
    private const int Rounds = 4096; // what PostgreSQL 15 itself takes; the passwords made here have 256 bits of chance

    public static string Of(string password, byte[] salt)
    {
        var salted = Rfc2898DeriveBytes.Pbkdf2(
            password,
            salt,
            Rounds,
            HashAlgorithmName.SHA256,
            SHA256.HashSizeInBytes
        );
        var stored = SHA256.HashData(HMACSHA256.HashData(salted, Encoding.ASCII.GetBytes("Client Key")));
        var server = HMACSHA256.HashData(salted, Encoding.ASCII.GetBytes("Server Key"));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"SCRAM-SHA-256${Rounds}:{Convert.ToBase64String(salt)}${Convert.ToBase64String(stored)}:{Convert.ToBase64String(server)}"
        );
    }
}
