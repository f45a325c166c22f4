using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>A figure was given at a point.</summary>
public sealed record FigureFact(Entry Entry, FigureDraft Draft, NamedDocument? Document) : Fact(Entry);

/// <summary>Somebody vouched for a figure.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Name">Who vouches.</param>
/// <param name="Figure">The figure that they saw, in one line.</param>
public sealed record VouchFact(Entry Entry, string Name, string Figure) : Fact(Entry);

/// <summary>A photograph was taken.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Figure">Key of the figure whose place it shows, or null.</param>
/// <param name="Picture">The picture.</param>
/// <param name="Shows">In a few words.</param>
public sealed record PhotographFact(Entry Entry, string? Figure, Picture Picture, string Shows) : Fact(Entry);

/// <summary>Reads the bodies of what was given at a point.</summary>
internal static class GivenFacts
{
    public static FigureFact Figure(Entry entry, Body body) =>
        new(
            entry,
            new(body.Text("key"), body.Text("demand"), body.Text("printed"), body.Text("origin"))
            {
                Tolerance = body.TextOrNone("tolerance"),
                Unit = body.TextOrNone("unit"),
                Also = body.TextOrNone("also"),
                When = body.TextOrNone("when"),
                Bolt = body.TextOrNone("bolt"),
            },
            body.ObjectOrNone("document") is { } document
                ? new(document.Text("name"), document.Text("title"), document.Text("edition"))
                : null
        )
        {
            Point = body.Text("point"),
        };

    public static VouchFact Vouch(Entry entry, Body body) =>
        body.Text("name") is var name && string.IsNullOrWhiteSpace(name)
            ? throw new NotUnderstood($"name: nobody is named")
            : new(entry, name, body.Text("figure")) { Point = body.Text("point") };

    public static PhotographFact Photograph(Entry entry, Body body)
    {
        if (body.Text("type") is var type && type != Picture.MediaType)
            throw new NotUnderstood($"type: \"{type}\" is not {Picture.MediaType}");
        var sha256 = body.Text("sha256");
        if (!Picture.IsHash(sha256))
            throw new NotUnderstood($"sha256: \"{sha256}\" is not 64 digits of lower-case hex");
        return new(
            entry,
            body.TextOrNone("figure"),
            new(sha256, Positive(body, "width"), Positive(body, "height"), Positive(body, "bytes")),
            body.Text("shows")
        )
        {
            Point = body.TextOrNone("point") ?? "",
        };
    }

    private static int Positive(Body body, string name) =>
        body.Whole(name) is > 0 and var whole ? whole : throw new NotUnderstood($"{name}: less than 1");
}
