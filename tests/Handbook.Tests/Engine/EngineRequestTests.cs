using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Handbook.Tests.Engine;

public class EngineRequestTests
{
    private const string Spread = """{"pressures":["12 bar","11 bar"],"spreadLimit":"15 %"}""";
    private const string Buyable = """{"from":"1.7 mm","to":"3 mm","step":"0.05 mm"}""";

    public static TheoryData<string, string, string?> Ends =>
        new()
        {
            { "compression-spread", Spread.Replace("15 %", "0 %"), null },
            { "compression-spread", Spread.Replace("15 %", "100 %"), null },
            { "compression-spread", Spread.Replace("15 %", "101 %"), "spreadLimit: \"101 %\"" },
            { "valve-shims", Shims(shim: "0.001 mm", clearance: "2.4 mm"), null },
            { "valve-shims", Shims(shim: "0.0009 mm"), "valves.0.shim: \"0.0009 mm\"" },
            { "valve-shims", Shims(shim: "100 mm", buyable: Buyable.Replace("3 mm", "100 mm")), null },
            { "valve-shims", Shims(shim: "100.1 mm"), "valves.0.shim: \"100.1 mm\"" },
            { "valve-shims", Shims(clearance: "0 mm"), null },
            { "valve-shims", Shims(clearance: "100.1 mm"), "valves.0.clearance: \"100.1 mm\"" },
            { "valve-shims", Shims(limit: "\"min\":\"0.1 mm\",\"max\":\"100 mm\""), null },
            { "valve-shims", Shims(limit: "\"min\":\"0.1 mm\",\"max\":\"0.1 mm\""), null },
            { "valve-shims", Shims(limit: "\"min\":\"0.11 mm\",\"max\":\"0.1 mm\""), "valves.0.min: above max" },
            { "valve-shims", Shims(limit: "\"min\":\"0.1 mm\",\"max\":\"0.15 mm\",\"target\":\"0.1 mm\""), null },
            { "valve-shims", Shims(limit: "\"min\":\"0.1 mm\",\"max\":\"0.15 mm\",\"target\":\"0.15 mm\""), null },
            { "valve-shims", Shims(buyable: Buyable.Replace("0.05 mm", "0.001 mm")), null },
            { "valve-shims", Shims(buyable: Buyable.Replace("0.05 mm", "0.0009 mm")), "buyable.step: \"0.0009 mm\"" },
            { "valve-shims", Shims(buyable: Buyable.Replace("0.05 mm", "100 mm")), null },
            { "valve-shims", Shims(buyable: Buyable.Replace("0.05 mm", "100.1 mm")), "buyable.step: \"100.1 mm\"" },
            { "valve-shims", Shims(buyable: Buyable.Replace("3 mm", "1.7 mm")), null },
            { "valve-shims", Shims(buyable: Buyable.Replace("3 mm", "1.6 mm")), "buyable.from: above to" },
            { "valve-shims", Shims(stock: 2000), null },
            { "valve-shims", Shims(stock: 2001), "stock: 2001 shims; allowed: at most 2000" },
            { "valve-shims", Engine([.. Enumerable.Range(1, 100).Select(i => $"V{i}")]), null },
            {
                "valve-shims",
                Engine([.. Enumerable.Range(1, 101).Select(i => $"V{i}")]),
                "valves: 101 valves; allowed: at most 100"
            },
            { "valve-shims", Engine("V1", "V2", "V2"), "valves.2.id: \"V2\" again" },
        };

    private static string Shims(
        string shim = "2.4 mm",
        string clearance = "0.1 mm",
        string limit = "\"min\":\"0.1 mm\",\"max\":\"0.15 mm\"",
        string buyable = Buyable,
        int stock = 0
    ) =>
        $$"""
            {"valves":[{"id":"I1","shim":"{{shim}}","clearance":"{{clearance}}",{{limit}}}],
             "stock":[{{string.Join(',', Enumerable.Repeat("\"2.4 mm\"", stock))}}],"buyable":{{buyable}} }
            """;

    private static string Engine(params string[] valves)
    {
        var each = valves.Select(v =>
            $$"""{"id":"{{v}}","shim":"2.4 mm","clearance":"0.1 mm","min":"0.1 mm","max":"0.15 mm"}"""
        );
        return $$"""{"valves":[{{string.Join(',', each)}}],"buyable":{{Buyable}} }""";
    }

    [Theory]
    [MemberData(nameof(Ends))]
    public void What_may_be_given_ends_where_it_says(string name, string given, string? told)
    {
        var reply = CaseFiles.Ask(name, given);
        if (told is not null)
            Assert.Contains(told, reply.Malformed);
        else
            Assert.Equal((null, null), (reply.Malformed, reply.Refusal));
    }
}
