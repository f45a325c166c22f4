using System.CommandLine;
using System.CommandLine.Parsing;
using System.Net;
using Witnessmark.Certificates;

namespace Witnessmark.Serve;

/// <summary>The options of <c>serve</c> that say where it listens.</summary>
internal sealed class ListeningOptions
{
    private const int UsualPort = 5080;

    private readonly Option<int> port = new("--port")
    {
        Description = "port on this computer; 0 takes any free one",
        DefaultValueFactory = _ => UsualPort,
    };
    private readonly Option<string?> urls = new("--urls")
    {
        Description = "addresses instead of --port, such as http://0.0.0.0:5080; whoever reaches them can write",
    };
    private readonly Option<int?> https = new("--https")
    {
        Description =
            $"HTTPS for all devices of the network, at this port ({Listening.UsualHttps}); without it they get the way to it",
        HelpName = "PORT",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<string?> on = new("--on")
    {
        Description = "with --https: the address of this computer that devices come to; left out: all it has",
    };
    private readonly Option<string?> certificate = new("--certificate")
    {
        Description =
            "HTTPS with a certificate of a public authority (.pfx, or .pem with the key in it) in place of the shop's own",
    };
    private readonly Option<string?> certificateKey = new("--certificate-key")
    {
        Description = "the private key of --certificate (.pem), where it is a file of its own",
    };
    private readonly Option<string?> behind = new("--behind")
    {
        Description =
            "addresses of the reverse proxies before this server, with commas; forwarded headers of nobody else count",
    };

    public ListeningOptions()
    {
        port.Validators.Add(result => Port(result, result.GetValueOrDefault<int>()));
        https.Validators.Add(result => Port(result, result.GetValueOrDefault<int?>() ?? 0));
        on.Validators.Add(result => Addresses(result));
        behind.Validators.Add(result => Addresses(result));
    }

    public void AddTo(Command serve)
    {
        foreach (var option in (Option[])[port, urls, https, on, certificate, certificateKey, behind])
            serve.Options.Add(option);
        serve.Validators.Add(result =>
        {
            var secure = result.GetResult(https) is not null || result.GetResult(certificate) is not null;
            if (secure && result.GetResult(urls) is not null)
                result.AddError("--urls and --https do not go together: --on and --port say where HTTPS is.");
            if (!secure && result.GetResult(on) is not null)
                result.AddError("--on goes with --https; without it, --urls says where the server listens.");
            if (result.GetResult(certificate) is null && result.GetResult(certificateKey) is not null)
                result.AddError("--certificate-key goes with --certificate.");
        });
    }

    public Listening Of(ParseResult parsed)
    {
        var plain = parsed.GetValue(port);
        var file = parsed.GetValue(certificate);
        var secure = parsed.GetResult(https) is not null || file is not null;
        return new(
            parsed.GetValue(urls) ?? $"http://127.0.0.1:{plain}",
            plain,
            secure ? parsed.GetValue(https) ?? Listening.UsualHttps : null
        )
        {
            On = parsed.GetValue(on) is { } address ? IPAddress.Parse(address) : null,
            Certificate = file is null
                ? null
                : new(
                    file,
                    parsed.GetValue(certificateKey),
                    Environment.GetEnvironmentVariable(CertificateFile.PasswordVariable)
                ),
            Behind = [.. Split(parsed.GetValue(behind)).Select(IPAddress.Parse)],
        };
    }

    private static void Port(OptionResult result, int port)
    {
        if (port is < 0 or > 65535)
            result.AddError($"{result.Option.Name} {port}: 0 to 65535 is allowed.");
    }

    private static void Addresses(OptionResult result)
    {
        foreach (var text in Split(result.GetValueOrDefault<string?>()).Where(t => ServerName.Address(t) is null))
            result.AddError($"{result.Option.Name}: \"{text}\" is no address such as 192.168.1.7.");
    }

    private static string[] Split(string? texts) => texts?.Split(',', StringSplitOptions.TrimEntries) ?? [];
}
