using System.Data.Common;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>Gives models, campaigns and texts their numbers within one import, and keeps each of them once.</summary>
internal sealed class CampaignTexts(DbConnection connection) : IDisposable
{
    private const int MostSpellings = 20_000;
    private readonly Dictionary<(string Make, string Model), long> models = [];
    private (Campaign Campaign, long Id)? lastCampaign;
    private (byte[] Key, long Id)? lastSays;

    private readonly Prepared findModel = Prepared.On(
        connection,
        "SELECT id, make, model FROM model WHERE make_key = $1 AND model_key = $2",
        2
    );
    private readonly Prepared addModel = Prepared.On(
        connection,
        "INSERT INTO model (make_key, model_key, make, model) VALUES ($1, $2, $3, $4) RETURNING id",
        4
    );
    private readonly Prepared respell = Prepared.On(
        connection,
        "UPDATE model SET make = $2, model = $3 WHERE id = $1",
        3
    );
    private readonly Prepared findCampaign = Prepared.On(
        connection,
        "SELECT id FROM campaign WHERE number = $1 AND component = $2 AND source = $3",
        3
    );
    private readonly Prepared addCampaign = Prepared.On(
        connection,
        """
        INSERT INTO campaign (number, component, source) VALUES ($1, $2, $3)
        ON CONFLICT (number, component, source) DO NOTHING RETURNING id
        """,
        3
    );
    private readonly Prepared findSays = Prepared.On(connection, "SELECT id FROM says WHERE digest = $1", 1);
    private readonly Prepared addSays = Prepared.On(
        connection,
        """
        INSERT INTO says (digest, maker, makers_number, built_from, built_to, recorded, affected, defect, consequence,
            remedy, notes, do_not_ride, park_outside, vins)
        VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14)
        ON CONFLICT (digest) DO NOTHING RETURNING id
        """,
        14
    );

    /// <summary>Number of the model; of several spellings the first in the order of their signs is kept, whichever came first.</summary>
    public long Model(string make, string model)
    {
        if (models.TryGetValue((make, model), out var known))
            return known;
        if (models.Count >= MostSpellings)
            models.Clear();
        return models[(make, model)] = ModelInStore(make, model);
    }

    /// <summary>Number of the campaign: its number, component and source.</summary>
    public long Campaign(Campaign campaign)
    {
        if (lastCampaign is { } last && IsSame(last.Campaign, campaign))
            return last.Id;
        object[] key = [campaign.Number, campaign.Component, (int)campaign.Source];
        var id = addCampaign.Number(key) ?? findCampaign.Number(key)!.Value; // most are new: one search instead of two
        lastCampaign = (campaign, id);
        return id;
    }

    /// <summary>Number of what it says.</summary>
    /// <param name="key">The text's <see cref="SaysDigest"/>.</param>
    /// <param name="says">The text.</param>
    public long Says(byte[] key, CampaignText says)
    {
        if (lastSays is { } last && last.Key.AsSpan().SequenceEqual(key))
            return last.Id;
        var id = Add(key, says) ?? findSays.Number([key])!.Value;
        lastSays = (key, id);
        return id;
    }

    public void Dispose()
    {
        foreach (
            var statement in (Prepared[])[findModel, addModel, respell, findCampaign, addCampaign, findSays, addSays]
        )
            statement.Dispose();
    }

    private static bool IsSame(Campaign a, Campaign b) =>
        a.Number == b.Number && a.Component == b.Component && a.Source == b.Source;

    private long ModelInStore(string make, string model)
    {
        var (makeKey, modelKey) = (NameKey.Of(make), NameKey.Of(model));
        using (var found = findModel.Rows(makeKey, modelKey))
        {
            if (found.Read())
            {
                var (id, kept) = (found.GetInt64(0), (found.GetString(1), found.GetString(2)));
                found.Close();
                if (IsBefore((make, model), kept))
                    respell.Change(id, make, model);
                return id;
            }
        }
        return addModel.Number(makeKey, modelKey, make, model)!.Value;
    }

    private static bool IsBefore((string Make, string Model) a, (string Make, string Model) b) =>
        string.CompareOrdinal(a.Make, b.Make) is var order && order != 0
            ? order < 0
            : string.CompareOrdinal(a.Model, b.Model) < 0;

    // Null: it is there already
    private long? Add(byte[] key, CampaignText says) =>
        addSays.Number(
            key,
            says.Maker,
            says.MakersNumber,
            SaysDigest.Day(says.BuiltFrom),
            SaysDigest.Day(says.BuiltTo),
            SaysDigest.Day(says.Recorded),
            says.Affected,
            says.Defect,
            says.Consequence,
            says.Remedy,
            says.Notes,
            says.DoNotRide,
            says.ParkOutside,
            SaysDigest.Vins(says)
        );
}
