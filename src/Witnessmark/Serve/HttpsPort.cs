using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Authentication;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Https;
using Witnessmark.Certificates;

namespace Witnessmark.Serve;

/// <summary>Opens the listening in Kestrel.</summary>
public static class HttpsPort
{
    /// <summary>Plain where nothing is shown; else HTTPS, and beside it plain HTTP that leads there.</summary>
    public static void Open(this IWebHostBuilder host, Listening listening, ShownCertificate? shown)
    {
        if (shown is null)
            host.UseUrls(listening.Urls);
        else
            host.ConfigureKestrel(server =>
            {
                Listen(server, listening.On, listening.Port, _ => { });
                Listen(server, listening.On, listening.Https!.Value, port => port.UseHttps(Handshake(shown)));
            });
    }

    /// <summary>Starts to listen.</summary>
    /// <exception cref="IOException">An address or a port cannot be had.</exception>
    public static void StartAt(this WebApplication app, Listening listening)
    {
        try
        {
            app.Start();
        }
        catch (SocketException refused) // a port that is taken is an IOException already
        {
            throw new IOException(
                $"The server cannot listen{(listening.On is null ? "" : $" on {listening.On}")}, ports {listening.Port} and {listening.Https}: {refused.Message}. Below 1024 a port needs more rights on many systems.",
                refused
            );
        }
    }

    /// <summary>This computer itself gets in whichever address the others come to.</summary>
    private static void Listen(KestrelServerOptions server, IPAddress? on, int port, Action<ListenOptions> with)
    {
        if (on is null)
        {
            server.ListenAnyIP(port, with);
            return;
        }
        server.Listen(on, port, with);
        if (!IPAddress.IsLoopback(on))
            server.Listen(IPAddress.Loopback, port, with);
    }

    /// <summary>With forward secrecy and authenticated encryption only, where .NET can choose; on Windows the system alone does.</summary>
    /// <remarks><b>Source.</b> RFC 9325, 4.2: recommended cipher suites of TLS 1.2; RFC 8446, 9.1, those of TLS 1.3.</remarks>
    private static readonly CipherSuitesPolicy? Suites = OperatingSystem.IsLinux()
        ? new([
            TlsCipherSuite.TLS_AES_128_GCM_SHA256,
            TlsCipherSuite.TLS_AES_256_GCM_SHA384,
            TlsCipherSuite.TLS_CHACHA20_POLY1305_SHA256,
            TlsCipherSuite.TLS_ECDHE_ECDSA_WITH_AES_128_GCM_SHA256,
            TlsCipherSuite.TLS_ECDHE_ECDSA_WITH_AES_256_GCM_SHA384,
            TlsCipherSuite.TLS_ECDHE_ECDSA_WITH_CHACHA20_POLY1305_SHA256,
            TlsCipherSuite.TLS_ECDHE_RSA_WITH_AES_128_GCM_SHA256,
            TlsCipherSuite.TLS_ECDHE_RSA_WITH_AES_256_GCM_SHA384,
            TlsCipherSuite.TLS_ECDHE_RSA_WITH_CHACHA20_POLY1305_SHA256,
        ])
        : null;

    /// <summary>RFC 8996: TLS 1.0 and 1.1 are no longer spoken.</summary>
    private static TlsHandshakeCallbackOptions Handshake(ShownCertificate shown) =>
        new()
        {
            OnConnection = _ =>
                ValueTask.FromResult(
                    new SslServerAuthenticationOptions
                    {
                        EnabledSslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13,
                        ServerCertificateContext = shown.Context,
                        CipherSuitesPolicy = Suites,
                    }
                ),
        };
}
