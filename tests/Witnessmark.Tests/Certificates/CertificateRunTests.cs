using System.Runtime.Versioning;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Backups;
using Witnessmark.Certificates;
using Witnessmark.Doctor;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Tests.Certificates;

/// <summary><c>witnessmark certificate</c> and what becomes of its files.</summary>
[UnsupportedOSPlatform("windows")] // there files have other rights
public sealed class CertificateRunTests : IDisposable
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private readonly ShopFolder shop = new();

    [Fact]
    public void It_is_made_once_and_a_second_time_only_for_the_server()
    {
        var (code, first, _) = Make(ShopFolder.Noon, "bench-1.local");
        Assert.Equal(0, code);
        Assert.Contains("Each device has to trust it once.", first);
        Assert.Contains("authority    Workshop authority ", first); // the folder does not say whose it is
        var authority = File.ReadAllBytes(shop.In("keys/authority.pem"));
        var server = File.ReadAllBytes(shop.In("keys/server.pem"));
        (code, var second, _) = Make(ShopFolder.Noon.AddDays(1), "192.168.1.7");
        Assert.Equal(0, code);
        Assert.DoesNotContain("trust it once", second);
        Assert.Contains("server       localhost, 192.168.1.7, 127.0.0.1, ::1", second);
        Assert.Equal(authority, File.ReadAllBytes(shop.In("keys/authority.pem")));
        Assert.NotEqual(server, File.ReadAllBytes(shop.In("keys/server.pem")));
    }

    [Fact]
    public void Where_no_name_is_given_it_is_for_this_computer()
    {
        var output = new StringWriter();
        var run = new CertificateRun(shop.Path, ShopFolder.Noon, output, TextWriter.Null);
        Assert.Equal(0, run.Make([], () => ServerNames.OfComputer("pc-1", ShopFolder.Addresses("10.0.0.9"))));
        Assert.Contains("server       pc-1, pc-1.local, localhost, 10.0.0.9, 127.0.0.1, ::1", output.ToString());
    }

    [Fact]
    public void The_private_keys_are_their_owners_to_read_and_nobody_elses()
    {
        shop.Made(ShopFolder.Noon, "bench-1.local");
        string[] files = [.. Directory.GetFiles(shop.In("keys")).Order()];
        Assert.Equal(["authority.pem", "server.pem"], files.Select(Path.GetFileName));
        Assert.All(files, f => Assert.Equal(OwnerAlone, File.GetUnixFileMode(f)));
        Assert.All(files, f => Assert.Contains("BEGIN PRIVATE KEY", File.ReadAllText(f)));
    }

    [Fact]
    public void What_a_write_that_was_cut_off_left_behind_does_not_lend_its_rights()
    {
        Directory.CreateDirectory(shop.In("keys"));
        File.WriteAllText(shop.In("keys/authority.pem.new"), "half");
        File.SetUnixFileMode(shop.In("keys/authority.pem.new"), OwnerAlone | UnixFileMode.OtherRead);
        shop.Made(ShopFolder.Noon);
        Assert.Equal(OwnerAlone, File.GetUnixFileMode(shop.In("keys/authority.pem")));
    }

    [Fact]
    public void An_authority_is_never_written_over()
    {
        var made = shop.Made(ShopFolder.Noon);
        var before = File.ReadAllText(shop.In("keys/authority.pem"));
        Assert.Throws<IOException>(() => CertificateFolder.Put(shop.Path, made.Authority));
        Assert.Equal(before, File.ReadAllText(shop.In("keys/authority.pem")));
        File.WriteAllText(shop.In("keys/authority.pem"), "torn");
        var (code, _, said) = Make(ShopFolder.Noon, "bench-1.local");
        Assert.Equal(2, code);
        Assert.Contains("Put the right file back, or move it away.", said);
        Assert.Equal("torn", File.ReadAllText(shop.In("keys/authority.pem")));
    }

    [Fact]
    public void What_may_not_sign_is_no_authority()
    {
        shop.Made(ShopFolder.Noon);
        File.Copy(shop.In("keys/server.pem"), shop.In("keys/authority.pem"), overwrite: true);
        var (code, _, said) = Make(ShopFolder.Noon, "bench-1.local");
        Assert.Equal(2, code);
        Assert.Contains("may not sign others", said);
    }

    [Theory]
    [InlineData("pc.example.org", "does not vouch for pc.example.org: it was made for local,")]
    [InlineData("shop", "could be a top-level domain")]
    [InlineData("*.local", "name each that devices open")]
    public void What_it_cannot_vouch_for_is_said_and_nothing_is_changed(string name, string why)
    {
        shop.Made(ShopFolder.Noon, "bench-1.local");
        var before = File.ReadAllText(shop.In("keys/server.pem"));
        var (code, _, said) = Make(ShopFolder.Noon, name);
        Assert.Equal(2, code);
        Assert.Contains(why, said);
        Assert.Equal(before, File.ReadAllText(shop.In("keys/server.pem")));
    }

    [Fact]
    public void A_first_name_that_is_refused_makes_no_authority()
    {
        Assert.Equal(2, Make(ShopFolder.Noon, "bench 1").Code);
        Assert.False(Directory.Exists(shop.In("keys")));
        var errors = new StringWriter();
        var nowhere = new CertificateRun(shop.In("nowhere"), ShopFolder.Noon, TextWriter.Null, errors);
        Assert.Equal(2, nowhere.Make(["bench-1"], () => ShopFolder.Names()));
        Assert.Contains("There is no data folder", errors.ToString());
    }

    [Fact]
    public void Renewed_it_is_for_the_same_names_with_another_key()
    {
        var made = shop.Made(ShopFolder.Noon, "bench-1.local", "192.168.1.7");
        var output = new StringWriter();
        Assert.Equal(0, new CertificateRun(shop.Path, ShopFolder.Noon.AddDays(300), output, TextWriter.Null).Renew());
        var next = CertificateFolder.Server(shop.Path)!;
        Assert.Equal(ServerNames.Of(made.Server).All, ServerNames.Of(next).All);
        Assert.Equal(ShopFolder.Noon.AddDays(299), next.From);
        Assert.NotEqual(made.Server.GetPublicKeyString(), next.GetPublicKeyString());
        Assert.Equal(
            System.Security.Cryptography.X509Certificates.X509ChainStatusFlags.NoError,
            ShopFolder.Verdict(next, made.Authority, ShopFolder.Noon.AddDays(300))
        );
    }

    [Fact]
    public void Where_there_is_none_show_and_renew_say_how_to_make_one()
    {
        var errors = new StringWriter();
        var run = new CertificateRun(shop.Path, ShopFolder.Noon, TextWriter.Null, errors);
        Assert.Equal((2, 2), (run.Show(json: false), run.Renew()));
        Assert.Equal(2, errors.ToString().Split("witnessmark certificate make").Length - 1);
    }

    [Theory]
    [InlineData(0, 0, 395)]
    [InlineData(395, 0, 0)]
    [InlineData(396, 1, -1)]
    public void Shown_as_JSON_it_says_the_days_that_are_left(int later, int code, int days)
    {
        var made = shop.Made(ShopFolder.Noon, "bench-1.local");
        var output = new StringWriter();
        var now = ShopFolder.Noon.AddDays(later);
        Assert.Equal(code, new CertificateRun(shop.Path, now, output, TextWriter.Null).Show(json: true));
        using var json = JsonDocument.Parse(output.ToString());
        var server = json.RootElement.GetProperty("server");
        Assert.Equal(days, server.GetProperty("daysLeft").GetInt32());
        Assert.Equal(made.Server.Until, server.GetProperty("validUntil").GetDateTimeOffset());
        Assert.Equal("bench-1.local", server.GetProperty("names")[0].GetString());
        var authority = json.RootElement.GetProperty("authority");
        Assert.Equal(made.Authority.Certificate.Fingerprint, authority.GetProperty("fingerprint").GetString());
        Assert.DoesNotContain("PRIVATE", output.ToString());
    }

    [Theory]
    [InlineData(0, true, "395 days left")]
    [InlineData(365, true, "30 days left")]
    [InlineData(366, false, "has 29 days left")]
    [InlineData(400, false, "has run out")]
    [InlineData(3600, false, "authority has 48 days left")]
    public void The_doctor_counts_the_days(int later, bool good, string said)
    {
        shop.Made(ShopFolder.Noon);
        var found = CertificateFinding.Of(shop.Path, ShopFolder.Noon.AddDays(later));
        Assert.Equal(good, found.Good);
        Assert.Contains(said, found.Says);
    }

    [Fact]
    public void The_doctor_finds_none_no_fault_and_an_open_or_torn_file_one()
    {
        Assert.True(CertificateFinding.Of(shop.Path, ShopFolder.Noon).Good);
        shop.Made(ShopFolder.Noon);
        File.SetUnixFileMode(shop.In("keys/authority.pem"), OwnerAlone | UnixFileMode.GroupRead);
        var open = CertificateFinding.Of(shop.Path, ShopFolder.Noon);
        Assert.False(open.Good);
        Assert.Contains("chmod 600", open.Says);
        File.SetUnixFileMode(shop.In("keys/authority.pem"), OwnerAlone);
        File.WriteAllText(shop.In("keys/server.pem"), "torn");
        Assert.False(CertificateFinding.Of(shop.Path, ShopFolder.Noon).Good);
        File.Delete(shop.In("keys/server.pem"));
        Assert.Contains("no server certificate", CertificateFinding.Of(shop.Path, ShopFolder.Noon).Says);
    }

    [Fact]
    public void A_backup_holds_the_authority_with_its_key_as_closed_as_it_was()
    {
        using var ledger = SqliteLedger.Open(shop.Path, TimeProvider.System);
        var made = shop.Made(ShopFolder.Noon);
        using var kept = new Serve.TempFolder();
        var (backup, _) = BackupRun.Write(shop.Path, kept.Path, ShopFolder.Noon);
        var again = Path.Combine(kept.Path, "again");
        RestoreRun.Run(backup, again, TimeProvider.System);
        foreach (var folder in (string[])[backup, again])
        {
            Assert.Equal(
                made.Authority.Certificate.Fingerprint,
                CertificateFolder.Authority(folder)!.Certificate.Fingerprint
            );
            Assert.Equal(OwnerAlone, File.GetUnixFileMode(Path.Combine(folder, "keys/authority.pem")));
        }
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        shop.Dispose();
    }

    private (int Code, string Said, string Errors) Make(DateTimeOffset at, params string[] names)
    {
        var (output, errors) = (new StringWriter(), new StringWriter());
        var code = new CertificateRun(shop.Path, at, output, errors).Make(names, () => ShopFolder.Names());
        return (code, output.ToString(), errors.ToString());
    }
}
