using System.Text.Json.Nodes;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>chain-round</c>.</summary>
internal static class ChainRoundContract
{
    private static readonly Input<double> Link = Take.Number("link", "links past the mark, counted on", -1e6, 1e6);
    private static readonly Input<Length> Slack = DriveInputs.Slack("slack", "slack read there");
    private static readonly Input<RoundReading[]> Readings = Take.Objects(
        "readings",
        "readings round the chain",
        [Link, Slack],
        g => new RoundReading(g.Of(Link), g.Of(Slack))
    );
    private static readonly Input<int> Harmonics = Take.Count("harmonics", "waves of the chain looked for", 1, 10)
        .Or(3, "3");
    private static readonly Input<double> Significance = Take.Number(
            "significance",
            "p below which a component is significant",
            0,
            1
        )
        .Or(0.01, "0.01");

    public static Calculation Calculation { get; } =
        new(
            "chain-round",
            "FinalDrive",
            "What makes the slack vary round the chain: wheel, front sprocket or chain.",
            "own model, F test of nested linear models; fit checked against NIST StRD",
            typeof(ChainRound),
            [DriveInputs.FrontTeeth, DriveInputs.RearTeeth, DriveInputs.Links, Readings, Harmonics, Significance],
            [
                new("mean", "mm", "fitted mean; left out when it cannot be told"),
                new("min", "mm", "smallest reading: adjust there"),
                new("max", "mm", "largest reading"),
                new("minAtLink", "1", "where the smallest was read"),
                new("residual", "mm", "scatter that the model leaves"),
                new("separable", "true or false", "whether the components can be told apart"),
                new("confounded", "list of wheel, front, chain, mean", "those that cannot be told apart"),
                new("components", "object", "wheel, front, chain: f, p, significant, size in mm and place in links"),
            ],
            given =>
                Reply.To(
                    ChainRound.From(
                        new(
                            given.Of(DriveInputs.FrontTeeth),
                            given.Of(DriveInputs.RearTeeth),
                            given.Of(DriveInputs.Links)
                        ),
                        given.Of(Readings),
                        given.Of(Harmonics),
                        given.Of(Significance)
                    ),
                    Written
                )
        );

    private static Gives Written(Round round)
    {
        var gives = new Gives()
            .With("mean", round.Mean, "mm")
            .With("min", round.Min, "mm")
            .With("max", round.Max, "mm")
            .With("minAtLink", round.MinAtLink, "1")
            .With("residual", round.Residual, "mm");
        if (round.Components is { } told)
            return gives.With("separable", true).With("components", Written(told));
        return round.Confounded is { } mixed
            ? gives.With("separable", false).With("confounded", new JsonArray([.. mixed.Select(m => (JsonNode)m)]))
            : gives;
    }

    private static JsonObject Written(RoundComponents told) =>
        new()
        {
            ["wheel"] = Written(told.Wheel),
            ["front"] = Written(told.Front),
            ["chain"] = Written(told.Chain.Tested)
                .With("peakToPeak", told.Chain.PeakToPeak, "mm")
                .With("tightestAtLink", told.Chain.TightestAtLink, "1")
                .Json,
        };

    private static JsonObject Written(Wave wave) =>
        Written(wave.Tested)
            .With("amplitude", wave.Amplitude, "mm")
            .With("loosestAtLink", wave.LoosestAtLink, "1")
            .Json;

    private static Gives Written(Tested tested) =>
        new Gives().With("f", tested.F, "1").With("p", tested.P, "1").With("significant", tested.Significant);
}
