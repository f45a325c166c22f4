using Npgsql;
using NpgsqlTypes;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>
/// An import into the store of a group: its rows go over the line in one stream (COPY) into a table of this transaction alone, and from there into the
/// shop's tables by one statement each. To ask for each row by itself takes a hundred times as many answers.
/// </summary>
/// <remarks><b>Source.</b> PostgreSQL 15, 14.4.2 Use COPY, and 14.4.3: one statement for many rows. The rules are those of <see cref="RowByRow"/>.</remarks>
internal sealed class CopiedCampaigns : CampaignWriter
{
    private readonly NpgsqlConnection connection;
    private readonly long run;
    private readonly NpgsqlBinaryImporter rows;
    private byte[] lastKey = [];
    private long brought;

    public CopiedCampaigns(NpgsqlConnection connection, long run)
    {
        (this.connection, this.run) = (connection, run);
        connection.Run(
            """
            CREATE TEMPORARY TABLE brought (make_key text, model_key text, make text, model text, year bigint, number text, component text,
                source bigint, digest bytea, maker text, makers_number text, built_from text, built_to text, recorded text, affected bigint,
                defect text, consequence text, remedy text, notes text, do_not_ride bigint, park_outside bigint, vins text) ON COMMIT DROP
            """
        );
        rows = connection.BeginBinaryImport("COPY brought FROM STDIN (FORMAT BINARY)");
    }

    public override void Write(Campaign campaign, byte[] key)
    {
        brought++;
        rows.StartRow();
        Texts(NameKey.Of(campaign.Make), NameKey.Of(campaign.Model), campaign.Make, campaign.Model);
        Number(campaign.Year ?? CampaignSchema.UnknownYear);
        Texts(campaign.Number, campaign.Component);
        Number((int)campaign.Source);
        rows.Write(key, NpgsqlDbType.Bytea);
        // the same words stand behind many models and years, one after the other: they go over the line once
        Words(lastKey.AsSpan().SequenceEqual(key) ? null : campaign.Says);
        lastKey = key;
    }

    public override ImportTotals Finish(long rows, long setAside)
    {
        this.rows.Complete();
        this.rows.Dispose();
        foreach (var step in Steps)
            connection.Run(step);
        connection.Change(Concerns, run);
        var (added, updated, unchanged) = connection
            .Rows(Counts, row => (row.GetInt64(0), row.GetInt64(1), row.GetInt64(2)), run)
            .Single();
        var duplicates = brought - added - updated - unchanged;
        if (updated > 0 || duplicates > 0)
            DropUnsaid(connection);
        return new(rows, added, updated, unchanged, duplicates, setAside);
    }

    public override void Dispose() => rows.Dispose();

    private static readonly string[] Steps =
    [
        "ANALYZE brought",
        // of several spellings the first in the order of their signs is kept, whichever came first
        """
            INSERT INTO model (make_key, model_key, make, model)
            SELECT DISTINCT ON (make_key, model_key) make_key, model_key, make, model FROM brought
            ORDER BY make_key, model_key, make COLLATE "C", model COLLATE "C"
            ON CONFLICT (make_key, model_key) DO UPDATE SET make = excluded.make, model = excluded.model
            WHERE (excluded.make COLLATE "C", excluded.model COLLATE "C") < (model.make COLLATE "C", model.model COLLATE "C")
            """,
        """
            INSERT INTO campaign (number, component, source) SELECT DISTINCT number, component, source FROM brought
            ON CONFLICT (number, component, source) DO NOTHING
            """,
        """
            INSERT INTO says (digest, maker, makers_number, built_from, built_to, recorded, affected, defect, consequence,
                remedy, notes, do_not_ride, park_outside, vins)
            SELECT DISTINCT ON (digest) digest, maker, makers_number, built_from, built_to, recorded, affected, defect, consequence,
                remedy, notes, do_not_ride, park_outside, vins
            FROM brought WHERE maker IS NOT NULL ORDER BY digest
            ON CONFLICT (digest) DO NOTHING
            """,
    ];

    private const string Concerns = """
        INSERT INTO concern (model, year, campaign, says, run)
        SELECT DISTINCT ON (m.id, b.year, c.id) m.id, b.year, c.id, s.id, $1::bigint
        FROM brought b
        JOIN model m ON (m.make_key, m.model_key) = (b.make_key, b.model_key)
        JOIN campaign c ON (c.number, c.component, c.source) = (b.number, b.component, b.source)
        JOIN says s ON s.digest = b.digest
        ORDER BY m.id, b.year, c.id, coalesce(s.do_not_ride, 0) DESC, coalesce(s.park_outside, 0) DESC,
            coalesce(s.recorded, '') COLLATE "C" DESC, s.digest DESC
        ON CONFLICT (model, year, campaign) DO UPDATE SET says = excluded.says, run = excluded.run, before = concern.says
        """;

    // what is named for the first time said nothing before
    private const string Counts = """
        SELECT count(*) FILTER (WHERE before IS NULL), count(*) FILTER (WHERE before <> says), count(*) FILTER (WHERE before = says)
        FROM concern WHERE run = $1
        """;

    private void Words(CampaignText? says)
    {
        Texts(
            says?.Maker,
            says?.MakersNumber,
            SaysDigest.Day(says?.BuiltFrom),
            SaysDigest.Day(says?.BuiltTo),
            SaysDigest.Day(says?.Recorded)
        );
        Number(says?.Affected);
        Texts(says?.Defect, says?.Consequence, says?.Remedy, says?.Notes);
        Number(Bit(says?.DoNotRide));
        Number(Bit(says?.ParkOutside));
        Texts(says is null ? null : SaysDigest.Vins(says));
    }

    private void Texts(params ReadOnlySpan<string?> texts)
    {
        foreach (var text in texts)
            if (text is null)
                rows.WriteNull();
            else
                rows.Write(text, NpgsqlDbType.Text);
    }

    private void Number(long? number)
    {
        if (number is { } value)
            rows.Write(value, NpgsqlDbType.Bigint);
        else
            rows.WriteNull();
    }

    private static long? Bit(bool? yes) => yes is { } known ? (known ? 1 : 0) : null;
}
