using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.JSInterop;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Client.Handbook;

/// <summary>The handbook answers on the device itself, with the same contract as on the command line.</summary>
/// <remarks>In the page: <c>DotNet.invokeMethod("Witnessmark.Client", "ask", "verdict", "{…}")</c>.</remarks>
public static class Asked
{
    /// <summary>One request of a calculation as JSON text; what it gives, refuses or complains about as JSON text.</summary>
    [JSInvokable("ask")]
    public static string Ask(string calculation, string given)
    {
        if (Calculations.Named(calculation) is not { } known)
            return Wrong($"There is no calculation \"{calculation}\".");
        try
        {
            using var parsed = JsonDocument.Parse(given);
            return known.Ask(parsed.RootElement).ToJson().ToJsonString();
        }
        catch (JsonException failure)
        {
            return Wrong($"not JSON, byte {failure.BytePositionInLine + 1}");
        }
    }

    private static string Wrong(string message) => new JsonObject { ["wrong"] = message }.ToJsonString();
}
