using System.Collections;
using System.Diagnostics;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// A home in which Chromium finds a shop by its name and, where somebody has led the device there, trusts its authority: on Linux it
/// looks for that in the NSS database of its user.
/// </summary>
public sealed class KnownShop : IDisposable
{
    private readonly string home = Directory.CreateTempSubdirectory("witnessmark-home-").FullName;

    private KnownShop(string name) => Name = name;

    public string Name { get; }

    /// <summary>A device that trusts the certificate in a file (DER), or null: none.</summary>
    public static KnownShop As(string name, byte[]? authority)
    {
        var known = new KnownShop(name);
        var store = Directory.CreateDirectory(Path.Combine(known.home, ".pki", "nssdb")).FullName;
        Certutil("-N", "-d", $"sql:{store}", "--empty-password");
        if (authority is null)
            return known;
        var file = Path.Combine(known.home, "authority.crt");
        File.WriteAllBytes(file, authority);
        Certutil("-A", "-d", $"sql:{store}", "-n", "shop", "-t", "C,,", "-i", file);
        return known;
    }

    /// <summary>The variables of this process, with another home.</summary>
    public IEnumerable<KeyValuePair<string, string>> Surroundings() =>
        Environment
            .GetEnvironmentVariables()
            .Cast<DictionaryEntry>()
            .Select(e => KeyValuePair.Create((string)e.Key, (string)e.Value!))
            .Where(e => e.Key != "HOME")
            .Append(KeyValuePair.Create("HOME", home));

    public void Dispose() => Directory.Delete(home, recursive: true);

    private static void Certutil(params string[] words)
    {
        using var run = Process.Start("certutil", words);
        run.WaitForExit();
        Assert.Equal(0, run.ExitCode);
    }
}
