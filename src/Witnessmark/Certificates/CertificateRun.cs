using Witnessmark.Bench.Jobs;
using Witnessmark.Calc;
using Witnessmark.Serve;

namespace Witnessmark.Certificates;

/// <summary>What <c>certificate</c> does and says; each ends with its exit code.</summary>
public sealed class CertificateRun(string data, DateTimeOffset now, TextWriter output, TextWriter errors)
{
    private const string Nameless = "Workshop"; // a folder whose files do not say yet whose it is

    /// <summary><c>make</c></summary>
    /// <param name="given">Names and addresses; empty: the computer's own.</param>
    /// <param name="ofComputer">What the computer is called and reached by.</param>
    public int Make(IReadOnlyList<string> given, Func<ServerNames> ofComputer) =>
        Said(() =>
        {
            if (!Directory.Exists(data))
                return Refused($"There is no data folder {data}.");
            var (names, wrong) = given.Count > 0 ? ServerNames.Read(given) : (ofComputer(), null);
            if (names is null)
                return Refused(wrong!);
            var (made, why) = CertificateMaking.Make(data, Shop(), names, now);
            return made is null ? Refused(why!) : Told(made);
        });

    /// <summary><c>show</c></summary>
    public int Show(bool json) =>
        Said(() =>
        {
            if (
                CertificateFolder.Authority(data) is not { } authority
                || CertificateFolder.Server(data) is not { } server
            )
                return Refused($"{data} has no certificate. {CertificateFolder.MakeOne}.");
            if (json)
                output.WriteLine(CertificateText.Object(authority, server, now));
            else
                foreach (var line in CertificateText.Lines(authority, server, now))
                    output.WriteLine(line);
            return now < authority.Certificate.Until && now < server.Until ? ExitCode.Ok : ExitCode.Differs;
        });

    /// <summary><c>renew</c></summary>
    public int Renew() =>
        Said(() =>
        {
            var (made, why) = CertificateMaking.Renew(data, now);
            return made is null ? Refused(why!) : Told(made);
        });

    private int Told(Made made)
    {
        if (made.AuthorityIsNew)
        {
            output.WriteLine(
                $"The shop has an authority now: {made.Authority.Name}. Each device has to trust it once."
            );
            output.WriteLine(
                "Its private key is in the data folder and in each backup: who has it can pass for this shop."
            );
        }
        foreach (var line in CertificateText.Lines(made.Authority, made.Server, now))
            output.WriteLine(line);
        return ExitCode.Ok;
    }

    private string Shop() =>
        WorkbenchFiles.Read(new DataFolder(data).Workbench()).Bench?.Workshop.Name is { Length: > 0 } name
            ? name
            : Nameless;

    private int Refused(string why)
    {
        errors.WriteLine(why);
        return ExitCode.Malformed;
    }

    private int Said(Func<int> work)
    {
        try
        {
            return work();
        }
        catch (Exception broken) when (broken is FormatException or IOException or UnauthorizedAccessException)
        {
            return Refused(broken.Message);
        }
    }
}
