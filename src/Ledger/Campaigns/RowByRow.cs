using System.Data.Common;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>Each row by itself, as a file in the same process takes it fastest.</summary>
internal sealed class RowByRow(DbConnection connection, long run) : CampaignWriter
{
    private readonly CampaignTexts texts = new(connection);
    private long added;
    private long updated;
    private long unchanged;
    private long duplicates;
    private bool leftOver;

    private readonly Prepared add = Prepared.On(
        connection,
        "INSERT INTO concern (model, year, campaign, says, run) VALUES ($1, $2, $3, $4, $5) ON CONFLICT (model, year, campaign) DO NOTHING",
        5
    );
    private readonly Prepared find = Prepared.On(
        connection,
        "SELECT says, run, before FROM concern WHERE model = $1 AND year = $2 AND campaign = $3",
        3
    );
    private readonly Prepared change = Prepared.On(
        connection,
        "UPDATE concern SET says = $4, run = $5, before = $6 WHERE model = $1 AND year = $2 AND campaign = $3",
        6
    );
    private readonly Prepared rank = Prepared.On(
        connection,
        """
        SELECT id FROM says WHERE id IN ($1, $2)
        ORDER BY coalesce(do_not_ride, 0) DESC, coalesce(park_outside, 0) DESC, coalesce(recorded, '') DESC, digest DESC LIMIT 1
        """,
        2
    );

    public override void Write(Campaign campaign, byte[] key)
    {
        var concern = new Key(
            texts.Model(campaign.Make, campaign.Model),
            campaign.Year ?? CampaignSchema.UnknownYear,
            texts.Campaign(campaign)
        );
        var says = texts.Says(key, campaign.Says);
        if (add.Change(concern.Model, concern.Year, concern.Campaign, says, run) > 0)
            added++;
        else
            Again(concern, says);
    }

    public override ImportTotals Finish(long rows, long setAside)
    {
        if (leftOver)
            DropUnsaid(connection);
        return new(rows, added, updated, unchanged, duplicates, setAside);
    }

    public override void Dispose()
    {
        foreach (var statement in (Prepared[])[add, find, change, rank])
            statement.Dispose();
        texts.Dispose();
    }

    private void Again(Key key, long says)
    {
        var (said, lastRun, before) = Find(key);
        if (lastRun != run)
        {
            change.Change(key.Model, key.Year, key.Campaign, says, run, said);
            Count(says == said, +1);
            leftOver |= says != said;
            return;
        }
        duplicates++;
        if (says == said)
            return;
        leftOver = true; // one of the two
        if (rank.Number(says, said) != says)
            return;
        change.Change(key.Model, key.Year, key.Campaign, says, run, before);
        if (before is null)
            return; // new in this import, whatever it says
        Count(said == before, -1);
        Count(says == before, +1);
    }

    private void Count(bool same, int by)
    {
        if (same)
            unchanged += by;
        else
            updated += by;
    }

    private (long Says, long Run, long? Before) Find(Key key)
    {
        using var row = find.Rows(key.Model, key.Year, key.Campaign);
        row.Read();
        return (row.GetInt64(0), row.GetInt64(1), row.IsDBNull(2) ? null : row.GetInt64(2));
    }

    private readonly record struct Key(long Model, int Year, long Campaign);
}
