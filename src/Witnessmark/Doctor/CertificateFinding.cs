using Witnessmark.Certificates;
using Witnessmark.Keys;

namespace Witnessmark.Doctor;

/// <summary>Whether the shop's own certificates last, and whether their keys are the shop's alone.</summary>
public static class CertificateFinding
{
    private const string Title = "certificate";

    // A server certificate lasts no longer than its authority, and every device has to be visited. A choice of this program.
    private const int AuthorityBelow = 90;

    /// <summary>What was found. That there is none is no fault: this computer itself needs none.</summary>
    public static Finding Of(string data, DateTimeOffset now)
    {
        try
        {
            return Open(data) is { } open
                    ? new(
                        Title,
                        false,
                        $"Others at this computer may read {open}, which holds a private key: chmod 600."
                    )
                : CertificateFolder.Authority(data) is { } authority ? OfAuthority(data, authority, now)
                : new(Title, true, "None made; phones and tablets need one (witnessmark certificate make).");
        }
        catch (Exception broken) when (broken is FormatException or IOException or UnauthorizedAccessException)
        {
            return new(Title, false, broken.Message);
        }
    }

    private static Finding OfAuthority(string data, Authority authority, DateTimeOffset now)
    {
        if (authority.Certificate.DaysLeft(now) is < AuthorityBelow and var last)
            return new(
                Title,
                false,
                $"The shop's authority has {Left(last)}: move {CertificateFolder.AuthorityFile} away, make another, and let every device trust it."
            );
        if (CertificateFolder.Server(data) is not { } server)
            return new(Title, false, $"There is an authority and no server certificate. {CertificateFolder.MakeOne}.");
        var left = server.DaysLeft(now);
        return server.IsDue(now)
            ? new(
                Title,
                false,
                $"The server certificate has {Left(left)}. serve --https renews it by itself; so does witnessmark certificate renew."
            )
            : new(
                Title,
                true,
                $"{Left(left)}; renewed by serve --https when fewer than {CertificateFacts.RenewBelow} are."
            );
    }

    private static string? Open(string data) =>
        new[] { CertificateFolder.AuthorityFile, CertificateFolder.ServerFile }
            .Select(name => Path.Combine(data, name))
            .FirstOrDefault(path => File.Exists(path) && SecretFile.IsOpenToOthers(path));

    private static string Left(int days) => days < 0 ? "run out" : $"{days} days left";
}
