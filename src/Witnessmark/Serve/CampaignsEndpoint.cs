using Witnessmark.Campaigns;
using Witnessmark.Languages;

namespace Witnessmark.Serve;

/// <summary>Campaigns of a machine from the shop's lists.</summary>
public static class CampaignsEndpoint
{
    /// <summary><c>GET /api/campaigns?make=&amp;model=&amp;year=&amp;vin=</c>; year and vin may be left out.</summary>
    public static IResult Get(
        string? make,
        string? model,
        string? year,
        string? vin,
        ServedShop shop,
        HttpRequest request
    )
    {
        var (machine, why) = AskedMachineText.Read(make, model, year, vin);
        return machine is null
            ? Failure.Of(400, why!)
            : Results.Json(CampaignAnswer.Of(machine, shop.Place.CampaignsIfThere(), AskedTongue.Of(request)));
    }
}
