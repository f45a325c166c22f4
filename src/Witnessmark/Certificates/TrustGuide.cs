namespace Witnessmark.Certificates;

/// <summary>How one kind of device is brought to trust the shop's authority.</summary>
/// <param name="Device">The kind, as people call it.</param>
/// <param name="Steps">What to do after the download, in its order.</param>
/// <param name="Compare">Where it shows the fingerprint.</param>
/// <param name="Away">How to take the trust away again.</param>
/// <param name="Agent">Words by which its browsers name it.</param>
internal sealed record TrustGuide(
    Sentence Device,
    IReadOnlyList<Sentence> Steps,
    Sentence Compare,
    Sentence Away,
    IReadOnlyList<string> Agent
)
{
    // file and shop are called so whatever the language
    private const string File = "witnessmark-authority.crt";
    private const string Hash = "certutil -hashfile \"%USERPROFILE%\\Downloads\\witnessmark-authority.crt\" SHA256";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<TrustGuide> All { get; } =
    [
        new(
            $"Android",
            [
                $"Open Settings and search it for “CA certificate”. It lies under Security and privacy, More security settings, Encryption and credentials, Install a certificate.",
                $"Choose CA certificate. Android warns that your traffic could be read: it says so of every authority that does not come with the system. Choose Install anyway and unlock the device. Without a screen lock Android first asks for one.",
                $"Choose {new AsItStands(File)} among the downloads.",
                $"Compare the fingerprint as below, then open the shop in Chrome.",
            ],
            $"Settings, Encryption and credentials, Trusted credentials, the tab User: tap the authority.",
            $"At the same place: tap the authority, then Remove.",
            ["Android"]
        ),
        new(
            $"iPhone or iPad",
            [
                $"Open this page in Safari, tap the download above and allow it. “Profile Downloaded” appears.",
                $"Open Settings. At its top stands Profile Downloaded (or General, VPN and Device Management). Tap More Details and the certificate there to compare the fingerprint, then Install, with your passcode.",
                $"Go to Settings, General, About, and at the very end Certificate Trust Settings. Switch the authority on. Without this step Safari goes on refusing.",
                $"Open the shop in Safari. From its Share menu, Add to Home Screen keeps it like an app.",
            ],
            $"Settings, General, VPN and Device Management, the authority, More Details: tap the certificate.",
            $"At the same place: Remove Profile.",
            ["iPhone", "iPad", "Macintosh"] // an iPad says that it is a Macintosh
        ),
        new(
            $"Windows",
            [
                $"Compare the fingerprint first, as below: Windows itself shows only a shorter one of another kind.",
                $"Open the downloaded file and choose Install Certificate, then Current User.",
                $"Choose Place all certificates in the following store, Browse, Trusted Root Certification Authorities. Left to itself, Windows puts it where it has no effect.",
                $"Finish, and answer the warning with Yes. Open the shop in Edge or Chrome; close the browser before if it was open.",
            ],
            $"In a command prompt: {new AsItStands(Hash)} (without colons, in small letters).",
            $"Press the Windows key and R, type certmgr.msc, open Trusted Root Certification Authorities, Certificates; right-click the authority, Delete.",
            ["Windows"]
        ),
        new(
            $"Firefox",
            [
                $"On Windows and Android first do what is said there: from version 120 on Firefox takes over what the system trusts.",
                $"Where it still refuses, and on Linux: Settings, Privacy and Security, Certificates, View Certificates, the tab Authorities, Import. Choose the downloaded file.",
                $"Choose View and compare the fingerprint. Then tick that it may identify websites, nothing else, and confirm.",
                $"Open the shop.",
            ],
            $"In the same list of authorities: choose it, then View; the line SHA-256.",
            $"In the same list of authorities: choose it, then Delete or Distrust.",
            ["Firefox/"]
        ),
    ];

    /// <summary>The one for a browser by what it says of itself; a guess, which only chooses what is open at first.</summary>
    public static TrustGuide? For(string? agent) =>
        agent is null
            ? null
            : All.FirstOrDefault(g => g.Agent.Any(word => agent.Contains(word, StringComparison.Ordinal)));
}
