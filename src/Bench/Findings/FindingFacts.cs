using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Findings;

/// <summary>Something was found, or said anew about a finding.</summary>
public sealed record FindingFact(
    Entry Entry,
    string Finding,
    string What,
    Urgency Urgency,
    IReadOnlyList<string> Photographs
) : Fact(Entry);

/// <summary>It was estimated what putting it right costs.</summary>
public sealed record EstimateFact(Entry Entry, string Finding, Estimate Estimate) : Fact(Entry);

/// <summary>The owner decided.</summary>
public sealed record DecisionFact(Entry Entry, string Finding, Decision Decision) : Fact(Entry);

/// <summary>Somebody put it right.</summary>
public sealed record PutRightFact(Entry Entry, string Finding, string How) : Fact(Entry);

/// <summary>Reads the bodies of what is said about findings.</summary>
internal static class FindingFacts
{
    public static FindingFact Finding(Entry entry, Body body) =>
        new(entry, Named(body), Filled(body, "what"), Word(body, "urgency", Urgencies.ByWords), Hashes(body))
        {
            Point = body.TextOrNone("point") ?? "",
        };

    public static EstimateFact Estimate(Entry entry, Body body)
    {
        var draft = new EstimateDraft(
            body.Text("currency"),
            body.Text("rate"),
            body.Text("tax"),
            body.Whole("minutes"),
            [
                .. body.Objects("parts")
                    .Select(p => new PartDraft(
                        p.Text("item"),
                        p.Text("quantity"),
                        p.Text("price"),
                        p.TextOrNone("tax")
                    )),
            ]
        );
        var read = draft.Read();
        return read.Refusal is { } refusal
            ? throw new NotUnderstood($"{refusal.Key}: {refusal.Because}")
            : new(entry, Named(body), read.Certain);
    }

    public static DecisionFact Decision(Entry entry, Body body)
    {
        var approved = Word(body, "decision", Decisions);
        var means = Word(body, "means", MeansWords.ByWords);
        var signature = body.TextOrNone("signature") is { } path ? Signature(path) : null;
        if (means == Means.Signature && signature is null)
            throw new NotUnderstood($"signature: decided by a signature that is missing");
        return new(
            entry,
            Named(body),
            new(
                entry,
                new(body.Text("what"), Word(body, "urgency", Urgencies.ByWords), body.TextOrNone("total")),
                approved,
                Filled(body, "name"),
                means,
                !approved && body.Has("acknowledged") && body.Truth("acknowledged"),
                signature
            )
        );
    }

    public static PutRightFact PutRight(Entry entry, Body body) => new(entry, Named(body), Filled(body, "how"));

    private static readonly Dictionary<string, bool> Decisions = new()
    {
        [EntryBody.Approved] = true,
        [EntryBody.Declined] = false,
    };

    private static string Named(Body body) => Filled(body, "finding");

    private static string Filled(Body body, string name) =>
        body.Text(name) is var text && string.IsNullOrWhiteSpace(text)
            ? throw new NotUnderstood($"{name}: nothing is said")
            : text;

    private static T Word<T>(Body body, string name, IReadOnlyDictionary<string, T> words) =>
        body.Text(name) is var text && words.TryGetValue(text, out var value)
            ? value
            : throw new NotUnderstood($"{name}: \"{text}\" is none of {string.Join(", ", words.Keys)}");

    private static IReadOnlyList<string> Hashes(Body body) =>
        body.TextsOrNone("photographs") is var hashes && hashes.FirstOrDefault(h => !Picture.IsHash(h)) is { } wrong
            ? throw new NotUnderstood($"photographs: \"{wrong}\" is not 64 digits of lower-case hex")
            : hashes;

    private static SignaturePath Signature(string path) =>
        SignaturePath.Read(path) is { Refusal: { } refusal }
            ? throw new NotUnderstood($"signature: {refusal.Because}")
            : SignaturePath.Read(path).Certain;
}
