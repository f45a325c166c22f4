using Microsoft.Data.Sqlite;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Verify;

namespace Witnessmark.Tests.Serve;

public class VerifyTests
{
    [Fact]
    public void Intact_is_0_changed_is_1_with_the_entry_named_and_unreadable_is_2()
    {
        using var folder = new TempFolder();
        Assert.Equal((2, ""), Run(folder.Path));

        using (var ledger = SqliteLedger.Open(folder.Path, TimeProvider.System))
            ledger.Accept(new("bench", 1, [.. Notes.Chain(3).Select(Bench.Record.EntryJson.Write)]));
        Assert.Equal((0, "Intact: 3 entries in 1 jobs; 0 set aside."), Run(folder.Path));

        Sql(folder.Path, "UPDATE entries SET Body = replace(Body, '24.4', '24.5') WHERE Seq = 2");
        var (code, said) = Run(folder.Path);
        Assert.Equal(1, code);
        Assert.StartsWith("Entry bench-2 (number 2 of bench/1, job 412) was changed", said);

        SqliteConnection.ClearAllPools();
        File.WriteAllText(Path.Combine(folder.Path, "ledger.db"), new string('x', 5000));
        Assert.Equal((2, ""), Run(folder.Path));
    }

    private static (int Code, string Said) Run(string folder)
    {
        var (output, errors) = (new StringWriter(), new StringWriter());
        var code = VerifyLedger.Run(folder, output, errors);
        Assert.Equal(code == 2, errors.ToString().Length > 0);
        return (code, output.ToString().Trim());
    }

    private static void Sql(string folder, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "ledger.db")}");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
