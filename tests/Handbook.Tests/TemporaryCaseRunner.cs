using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests;

public class TemporaryCaseRunner
{
    [Theory]
    [InlineData("valve-shims")]
    [InlineData("compression-spread")]
    [InlineData("bench-order")]
    public void Cases_hold(string file)
    {
        var groups = JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", file + ".json")))!;
        foreach (var group in groups.AsArray())
        foreach (var one in group!["cases"]!.AsArray())
        {
            var given = JsonSerializer.SerializeToElement(one!["given"]);
            var reply = Calculations.Named((string)group["calculation"]!)!.Ask(given);
            Assert.Null(reply.Malformed);
            if (one["refused"] is { } refused)
                Assert.Equal((string)refused!, reply.Refusal!.Key);
            foreach (var (key, expected) in one["expect"]?.AsObject() ?? [])
            {
                if (key == "refused")
                {
                    Assert.Equal((string)expected!, reply.Refusal!.Key);
                    continue;
                }
                JsonNode found = reply.Outputs!;
                foreach (var part in key.Split('.'))
                    found = int.TryParse(part, out var i) ? found[i]! : found[part]!;
                if (expected is JsonObject quantity)
                    Assert.Equal((double)quantity["value"]!, (double)found["value"]!, (double)quantity["tolerance"]!);
                else
                    Assert.Equal(expected!.ToJsonString(), found.ToJsonString());
            }
        }
    }
}
