using System.Net;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>The way to the group's store.</summary>
internal static class GroupConnection
{
    private const int ConnectSeconds = 5;

    // the others encrypt if the store likes, or towards whoever answers
    private static readonly SslMode[] SaidHow = [SslMode.VerifyFull, SslMode.VerifyCA, SslMode.Disable];

    private const int WaitSeconds = 30; // as long as one SQLite writer waits for another

    /// <summary>The way of one shop's servers: to whichever of the machines is the primary now, and to this shop's own part of the tables.</summary>
    /// <exception cref="FormatException">The text is no connection, or it would go over a network in the open.</exception>
    public static (ShopName Shop, NpgsqlDataSource Source) OfShop(string text)
    {
        var to = Read(text);
        var shop = ShopName.OfRole(to.Username);
        to.SearchPath = shop.Schema;
        var builder = new NpgsqlDataSourceBuilder(to.ConnectionString);
        builder.UsePhysicalConnectionInitializer(
            Durable.Demand,
            connection =>
            {
                Durable.Demand(connection);
                return Task.CompletedTask;
            }
        );
        return (shop, ToPrimary(builder));
    }

    /// <summary>The way of whoever adds shops.</summary>
    /// <exception cref="FormatException">The text is no connection, or it would go over a network in the open.</exception>
    public static NpgsqlDataSource OfAdmin(string text) =>
        ToPrimary(new NpgsqlDataSourceBuilder(Read(text).ConnectionString));

    /// <summary>What a connection text says, with what this program asks of every connection.</summary>
    public static NpgsqlConnectionStringBuilder Read(string text)
    {
        try
        {
            var to = new NpgsqlConnectionStringBuilder(text)
            {
                Timeout = ConnectSeconds,
                CommandTimeout = WaitSeconds,
                CancellationTimeout = -1, // who gave up does not wait on: it is sent again
                HostRecheckSeconds = 1, // the standby may have taken over
                MaxPoolSize = 20,
                MaxAutoPrepare = 40, // an import runs the same few statements for each row
                ApplicationName = "witnessmark",
            };
            return !SaidHow.Contains(to.SslMode) && Hosts(to).Any(h => !IsHere(h))
                ? throw new FormatException(
                    $"The connection to {to.Host} goes over a network: say SSL Mode=VerifyFull, or SSL Mode=Disable where nobody can listen."
                )
                : to;
        }
        catch (ArgumentException wrong)
        {
            throw new FormatException($"That is no connection to PostgreSQL: {wrong.Message}", wrong);
        }
    }

    private static NpgsqlDataSource ToPrimary(NpgsqlDataSourceBuilder builder) =>
        builder.BuildMultiHost().WithTargetSession(TargetSessionAttributes.Primary);

    private static string[] Hosts(NpgsqlConnectionStringBuilder to) =>
        (to.Host ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static bool IsHere(string host)
    {
        var name = host.StartsWith('[') ? host.Split(']')[0].TrimStart('[') : host.Split(':')[0];
        return host.StartsWith('/')
            || name == "localhost"
            || (IPAddress.TryParse(name, out var address) && IPAddress.IsLoopback(address));
    }
}
