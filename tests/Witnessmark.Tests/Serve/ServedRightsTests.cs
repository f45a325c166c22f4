using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Serve;

public sealed class ServedRightsTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_folder_that_the_program_makes_is_its_owners_alone()
    {
        var data = Path.Combine(folder.Path, "data");
        using var ledger = SqliteLedger.Open(data, TimeProvider.System);
        Assert.False(OwnFolder.IsOpenToOthers(data));
        Assert.Empty(ServedRights.Risks(data, privileged: false, ofGroup: false));
    }

    [Fact]
    public void What_others_get_into_and_a_server_that_may_do_everything_are_said()
    {
        if (OperatingSystem.IsWindows())
            return; // its rights are not looked at
        File.SetUnixFileMode(folder.Path, File.GetUnixFileMode(folder.Path) | UnixFileMode.GroupExecute);
        Assert.Contains("chmod go=", Assert.Single(ServedRights.Risks(folder.Path, privileged: false, ofGroup: false)));
        Assert.Empty(ServedRights.Risks(folder.Path, privileged: false, ofGroup: true));
        Assert.Contains("a user of its own", Assert.Single(ServedRights.Risks(folder.Path, true, ofGroup: true)));
    }
}
