using System.Data;
using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.Stock;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>All that one shop has in the group's store, as one of its servers sees it.</summary>
public sealed class GroupShop : IDisposable
{
    private readonly NpgsqlDataSource source;
    private readonly News news;

    private GroupShop(ShopName name, NpgsqlDataSource source, TimeProvider clock)
    {
        (Name, this.source) = (name, source);
        MakeTurns();
        news = new(source, name);
        Ledger = new(() => PostgresLedgerContext.Through(source), clock, tellOthers: news.Tell);
        Door = new(new GroupRows(source, Turn.Door));
        Stock = new(new GroupRows(source, Turn.Stock));
        Files = new(new GroupRows(source, Turn.Files));
        Register = new(new GroupRows(source, Turn.Machines), () => { });
        Campaigns = new(new GroupRows(source, Turn.Campaigns));
        Sheets = new(new GroupRows(source, Turn.Sheets));
    }

    /// <summary>Which shop.</summary>
    public ShopName Name { get; }

    /// <summary>Its entries.</summary>
    public ShopLedger Ledger { get; }

    /// <summary>Who may come in.</summary>
    public DoorStore Door { get; }

    /// <summary>Its shelf.</summary>
    public StockStore Stock { get; }

    /// <summary>Photographs and sealed secrets.</summary>
    public GroupFiles Files { get; }

    /// <summary>Its machines.</summary>
    public MachineRegister Register { get; }

    /// <summary>Recalls and bulletins.</summary>
    public CampaignStore Campaigns { get; }

    /// <summary>Figure sheets as they were set on a screen.</summary>
    public GroupSheets Sheets { get; }

    /// <summary>Opens the shop that the connection logs in as.</summary>
    /// <exception cref="LedgerUnavailable">The store cannot be reached, or does not keep what it promises.</exception>
    /// <exception cref="FormatException">The text is no connection of a shop.</exception>
    public static GroupShop Open(string connection, TimeProvider clock)
    {
        var (name, source) = GroupConnection.OfShop(connection);
        try
        {
            return new(name, source, clock);
        }
        catch (DbException broken)
        {
            source.Dispose();
            throw new LedgerUnavailable($"The store cannot be opened: {broken.GetBaseException().Message}", broken);
        }
    }

    /// <summary>The shop that a connection logs in as.</summary>
    /// <exception cref="FormatException">The text is no connection of a shop.</exception>
    public static ShopName NameIn(string connection) => ShopName.OfRole(GroupConnection.Read(connection).Username);

    /// <summary>Hears from now on what the other servers of this shop take in.</summary>
    public void HearOthers() => news.Hear(Ledger);

    /// <summary>Walks every chain of the shop's ledger as it stands at one moment.</summary>
    public LedgerFinding Check() => Read(LedgerCheck.Of);

    /// <summary>When the newest entry came in; null in an empty ledger.</summary>
    public DateTimeOffset? LastReceived() =>
        Read(ledger => ledger.Entries.Max(e => e.Received)) is { } text
            ? DateTimeOffset.Parse(text, CultureInfo.InvariantCulture)
            : null;

    /// <summary>Which machine has the store now, and which standbys have every commit before it is acknowledged.</summary>
    public (string Primary, string Standbys) Machines() =>
        Do(connection =>
            (
                connection.Host ?? "",
                connection.Rows("SELECT current_setting('synchronous_standby_names')", row => row.GetString(0)).Single()
            )
        );

    /// <summary>Gives the ledger another identity after it came out of a dump: every device sends again what it still has.</summary>
    public void Rename(TimeProvider clock) =>
        Do(connection =>
        {
            using var transaction = connection.BeginTransaction();
            Turn.Take(connection, Turn.Ledger);
            connection.Change(
                "UPDATE ledger_identity SET \"Id\" = $1, \"Created\" = $2",
                Guid.NewGuid().ToString("n"),
                Moment.Text(clock.GetUtcNow())
            );
            Turn.Keep(connection, transaction.Commit);
            return true;
        });

    /// <inheritdoc />
    public void Dispose()
    {
        news.Dispose();
        Ledger.Dispose();
        source.Dispose();
    }

    private void MakeTurns()
    {
        using var connection = source.OpenConnection();
        foreach (var what in Turn.All)
            connection.Change("INSERT INTO turn (what) VALUES ($1) ON CONFLICT DO NOTHING", what);
    }

    private T Read<T>(Func<LedgerContext, T> read) =>
        Do(connection =>
        {
            using var ledger = PostgresLedgerContext.Over(connection);
            using var snapshot = ledger.Database.BeginTransaction(IsolationLevel.RepeatableRead);
            return read(ledger);
        });

    private T Do<T>(Func<NpgsqlConnection, T> work)
    {
        try
        {
            using var connection = source.OpenConnection();
            return work(connection);
        }
        catch (Exception broken)
            when (broken is DbException or InvalidOperationException { InnerException: DbException })
        {
            throw new LedgerUnavailable($"The store cannot be used: {broken.GetBaseException().Message}", broken);
        }
    }
}
