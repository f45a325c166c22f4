using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;

namespace Witnessmark.Campaigns;

/// <summary><c>campaigns for</c>: one machine in the lists.</summary>
internal static class LookUp
{
    /// <summary>0 looked up, 2 the question or the store cannot be read, 3 there is no list to look in.</summary>
    public static int Run(AskedMachine? machine, string? why, CommandPlace place, bool json)
    {
        if (machine is null)
            return Fail(why!, ExitCode.Malformed);
        try
        {
            var answer = place.In(shop => CampaignAnswer.Of(machine, shop.CampaignsIfThere(), Tongue.Written));
            if (json)
                JsonText.Print((JsonObject)JsonSerializer.SerializeToNode(answer, JsonSerializerOptions.Web)!);
            else if (answer.LookedUp)
                LookUpText.Write(answer, Console.Out);
            return answer.LookedUp
                ? ExitCode.Ok
                : Fail(
                    $"Not looked up: no list was imported into {place.Called}. That is not \"no campaign\". See campaigns import.",
                    ExitCode.Refused
                );
        }
        catch (LedgerUnavailable broken)
        {
            return Fail(broken.Message, ExitCode.Malformed);
        }
    }

    private static int Fail(string why, int code)
    {
        Console.Error.WriteLine(why);
        return code;
    }
}
