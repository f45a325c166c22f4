using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>
/// What a server shows to whoever connects. It is looked at anew at each handshake: renewed when it is about to run out, read again when
/// somebody put another in its place; connections that are open stay, and nothing is started again.
/// </summary>
public sealed class ShownCertificate
{
    private static readonly TimeSpan Pause = TimeSpan.FromHours(1); // after an attempt that failed

    private readonly Func<DateTime> written;
    private readonly Func<CertificateChain> read;
    private readonly Func<DateTimeOffset, string?>? renew;
    private readonly TimeProvider clock;
    private readonly TextWriter says;
    private readonly Lock looking = new();
    private CertificateChain chain;
    private SslStreamCertificateContext context;
    private DateTime readAt;
    private DateTimeOffset notBefore = DateTimeOffset.MinValue;

    private ShownCertificate(
        Func<DateTime> written,
        Func<CertificateChain> read,
        Func<DateTimeOffset, string?>? renew,
        TimeProvider clock,
        TextWriter says
    )
    {
        (this.written, this.read, this.renew, this.clock, this.says) = (written, read, renew, clock, says);
        (readAt, chain, context) = Fresh();
    }

    /// <summary>The shop's own server certificate; null: none was made.</summary>
    /// <exception cref="FormatException">The file among the keys holds none.</exception>
    public static ShownCertificate? OfShop(string data, TimeProvider clock, TextWriter says) =>
        CertificateFolder.Server(data) is null
            ? null
            : new(
                () => File.GetLastWriteTimeUtc(Path.Combine(data, CertificateFolder.ServerFile)),
                () =>
                    new(
                        CertificateFolder.Server(data)?.ForHandshakes() ?? throw new FormatException("It is gone."),
                        []
                    ),
                now => CertificateMaking.Renew(data, now).Why,
                clock,
                says
            );

    /// <summary>One in a file, which somebody else renews.</summary>
    /// <exception cref="FormatException">The file holds none.</exception>
    public static ShownCertificate OfFile(CertificateFile file, TimeProvider clock, TextWriter says) =>
        new(file.Written, file.Read, null, clock, says);

    /// <summary>The server certificate as it is now.</summary>
    public X509Certificate2 Server
    {
        get
        {
            lock (looking)
            {
                Look();
                return chain.Server;
            }
        }
    }

    /// <summary>What a handshake needs.</summary>
    public SslStreamCertificateContext Context
    {
        get
        {
            lock (looking)
            {
                Look();
                return context;
            }
        }
    }

    private void Look()
    {
        var now = clock.GetUtcNow();
        if (now < notBefore)
            return;
        if (renew is not null && chain.Server.IsDue(now))
            Try(() => renew(now), now);
        if (written() != readAt)
            Try(ReadAgain, now);
    }

    private string? ReadAgain()
    {
        (readAt, chain, context) = Fresh();
        return null;
    }

    private (DateTime, CertificateChain, SslStreamCertificateContext) Fresh()
    {
        var at = written();
        var found = read();
        return (at, found, SslStreamCertificateContext.Create(found.Server, found.Between, offline: true));
    }

    /// <summary>Whoever connects gets the certificate that is there: a full disk must not close the shop a month too early.</summary>
    private void Try(Func<string?> work, DateTimeOffset now)
    {
        string? why;
        try
        {
            why = work();
        }
        catch (Exception broken)
            when (broken is IOException or UnauthorizedAccessException or FormatException or CryptographicException)
        {
            why = broken.Message;
        }
        if (why is null)
            return;
        notBefore = now + Pause;
        says.WriteLine($"The certificate stays as it is until {chain.Server.Until:yyyy-MM-dd}: {why}");
    }
}
