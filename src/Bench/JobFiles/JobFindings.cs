using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.JobFiles;

/// <summary>The <c>[[findings]]</c> of a job file: each with its photographs, its estimate, the owner's decision and how it was put right.</summary>
internal sealed class JobFindings(
    Workbench bench,
    Func<string, bool> hasPoint,
    List<Book.Point> plan,
    Drafts drafts,
    Func<string, byte[]?> pictures
)
{
    private const int LongestName = 60;
    private static readonly string[] Decisions = [EntryBody.Approved, EntryBody.Declined];
    private readonly List<string> names = [];

    public void Take(TomlTable table)
    {
        var name = Name(table);
        var what = table.Text("what");
        var urgency = table.OneOf("urgency", Urgencies.ByWords);
        var point = Point(table);
        drafts.Add(EntryKind.Finding, EntryBody.Finding(name, point, what, urgency, Photographs(table, point, what)));
        var estimate = Estimate(table, name);
        Decide(table, name, point, new(what, urgency, estimate?.Total.ToString()));
        if (table.TextOrNothing("put-right") is { } how)
            drafts.Add(EntryKind.PutRight, EntryBody.PutRight(name, how));
        table.NoOtherKeys();
    }

    private string Name(TomlTable table)
    {
        var name = table.Text("name");
        if (name.Length > LongestName || !name.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'))
            table.Wrong("name", $"\"{name}\"", $"letters, digits and hyphens, at most {LongestName}");
        else if (names.Contains(name))
            table.Wrong("name", $"\"{name}\" a second time", "a name of its own for each finding");
        names.Add(name);
        return name;
    }

    private string? Point(TomlTable table)
    {
        if (table.TextOrNothing("point") is not { } point)
            return null;
        if (!bench.Book.Points.ContainsKey(point))
            table.Wrong(
                "point",
                $"the bench book has no point \"{point}\"",
                Nearest.InWords(point, [.. bench.Book.Points.Keys])
            );
        else if (!hasPoint(point))
            table.Wrong("point", $"this machine has no \"{point}\"", "a point that the machine has, or none");
        return point;
    }

    private List<string> Photographs(TomlTable table, string? point, string what)
    {
        List<string> hashes = [];
        foreach (var path in table.Texts("photographs"))
            if (pictures(path) is not { } file)
                table.Mistakes.Add(
                    table.At("photographs", path),
                    $"there is no file \"{path}\"",
                    "the path of a JPEG picture from this file"
                );
            else if (StoredPicture.Of(file) is { Refusal: { } refusal })
                table.Mistakes.Add(table.At("photographs", path), refusal.Because, "an ordinary JPEG picture, shrunk");
            else
            {
                var picture = StoredPicture.Of(file).Certain.Picture;
                drafts.Add(EntryKind.Photograph, EntryBody.Photograph(point, null, picture, what));
                hashes.Add(picture.Sha256);
            }
        return hashes;
    }

    private Estimate? Estimate(TomlTable table, string name)
    {
        var minutes = table.WholeOrNothing("minutes", 0, EstimateDraft.MostMinutes);
        var parts = table.TableList("parts").Select(Part).ToList();
        if (minutes is null && parts.Count == 0)
            return null;
        if (bench.Workshop.Estimates is not { } terms)
        {
            table.Wrong(minutes is null ? "parts" : "minutes", "an estimate without a rate", EstimateTerms.Missing);
            return null;
        }
        var draft = EstimateDraft.At(terms, minutes ?? 0, parts);
        var read = draft.Read();
        if (read.Refusal is { } refusal)
        {
            table.Wrong(
                refusal.Key == "minutes" || parts.Count == 0 ? "minutes" : "parts",
                refusal.Because.Open(),
                "parts = [{ item = \"…\", quantity = \"1\", price = \"12.50\" }] and minutes = 30"
            );
            return null;
        }
        drafts.Add(EntryKind.Estimate, EntryBody.Estimate(name, draft));
        return read.Certain;
    }

    private static PartDraft Part(TomlTable table)
    {
        const string number = "a number such as \"12.50\"";
        var part = new PartDraft(
            table.Text("item"),
            table.DecimalOrNothing("quantity", number) ?? "1",
            table.DecimalOrNothing("price", number) ?? Missing(table),
            table.DecimalOrNothing("tax", number)
        );
        table.NoOtherKeys();
        return part;
    }

    private static string Missing(TomlTable table)
    {
        if (!table.Has("price"))
            table.Wrong("price", "\"price\" is missing", "price = what one costs before tax, e.g. \"12.50\"");
        return "0";
    }

    private void Decide(TomlTable table, string name, string? point, Told told)
    {
        var by = table.TextOrNothing("by");
        var acknowledged = table.TruthOrNothing("acknowledged") ?? false;
        var signature = Signature(table);
        if (table.WordOrNothing("decision", Decisions) is not { } decision)
        {
            table.LetStand("means");
            if (by is not null && !table.Has("decision"))
                table.Wrong("by", "a name without a decision", "decision = \"approved\" or \"declined\" beside it");
            return;
        }
        var means = table.OneOf("means", MeansWords.ByWords);
        if (by is null)
            table.Wrong("decision", "a decision of nobody", "by = the name of the owner beside it");
        if (means == Means.Signature && table.Has("means") && signature is null && !table.Has("signature"))
            table.Wrong(
                "means",
                "a signature that is not there",
                "signature = \"M12 30L14 33…\" beside it, or other means"
            );
        if (acknowledged && decision == EntryBody.Approved)
            table.Wrong(
                "acknowledged",
                "acknowledged though approved",
                "acknowledged only beside decision = \"declined\""
            );
        drafts.Add(
            EntryKind.Decision,
            EntryBody.Decision(name, told, decision == EntryBody.Approved, by ?? "", means, acknowledged, signature)
        );
        if (
            decision == EntryBody.Approved
            && point is not null
            && bench.Book.Points.TryGetValue(point, out var known)
            && !plan.Contains(known)
        )
            plan.Add(known);
    }

    private static SignaturePath? Signature(TomlTable table)
    {
        if (table.TextOrNothing("signature") is not { } path)
            return null;
        var read = SignaturePath.Read(path);
        if (read.Refusal is { } refusal)
            table.Wrong("signature", refusal.Because.Open(), "strokes such as \"M12 30L14 33L18 40\"");
        return read.Value;
    }
}
