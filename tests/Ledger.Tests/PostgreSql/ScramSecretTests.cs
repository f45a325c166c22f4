using System.Security.Cryptography;
using System.Text;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Ledger.Tests.PostgreSql;

public class ScramSecretTests
{
    // RFC 7677, 3: user "user", password "pencil"; from memory, and right if the proofs come out
    private const string Salt = "W22ZaJ0SNY7soEsUEjb6gQ==";
    private const string Exchange =
        "n=user,r=rOprNGfwEbeRWgbNEkqO,"
        + "r=rOprNGfwEbeRWgbNEkqO%hvYDpWUa2RaTCAfuxFIlj)hNlF$k0,s=W22ZaJ0SNY7soEsUEjb6gQ==,i=4096,"
        + "c=biws,r=rOprNGfwEbeRWgbNEkqO%hvYDpWUa2RaTCAfuxFIlj)hNlF$k0";
    private const string ClientProof = "dHzbZapWIk4jUhN+Ute9ytag9zjfMHgsqmmiz7AndVQ=";
    private const string ServerSignature = "6rriTRBi23WpRR/wtup+mMhUZUn/dB5nLTJRsjl95G4=";

    [Fact]
    public void It_accepts_the_proof_of_the_published_exchange_and_answers_it()
    {
        var parts = ScramSecret.Of("pencil", Convert.FromBase64String(Salt)).Split('$', ':');
        Assert.Equal(["SCRAM-SHA-256", "4096", Salt], parts[..3]);
        var (stored, server) = (Convert.FromBase64String(parts[3]), Convert.FromBase64String(parts[4]));
        var exchange = Encoding.ASCII.GetBytes(Exchange);
        Assert.Equal(ServerSignature, Convert.ToBase64String(HMACSHA256.HashData(server, exchange)));
        var signature = HMACSHA256.HashData(stored, exchange);
        var client = Convert.FromBase64String(ClientProof).Zip(signature, (p, s) => (byte)(p ^ s)).ToArray();
        Assert.Equal(stored, SHA256.HashData(client));
    }
}
