using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary>A calculation in words, out of its contract and the documentation comments of its class.</summary>
public static class Description
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>For a terminal.</summary>
    public static string Text(Calculation calculation)
    {
        var page = PageText.Of(calculation.Page);
        var text = new StringBuilder($"{calculation.Name} ({calculation.Group})\n{page.Summary}\n\nTakes\n");
        foreach (var (path, input) in Inputs(calculation.Takes))
            text.Append(
                $"  {path}{(input.Optional ? "?" : "")}: {input.Meaning}\n      {input.Kind}{Default(input)}\n"
            );
        text.Append($"\nAs options\n  witnessmark calc {calculation.Name}\n");
        foreach (var line in OptionForm.Lines(calculation))
            text.Append($"      {line}\n");
        text.Append("\nGives\n");
        foreach (var output in calculation.Gives)
            text.Append($"  {output.Name} [{output.Kind}]: {output.Meaning}\n");
        foreach (var (title, part) in page.Parts)
            text.Append($"\n{title}\n{Wrapped(part)}");
        return text.ToString();
    }

    /// <summary>For its page in docs/handbook.</summary>
    public static string Markdown(Calculation calculation)
    {
        var page = PageText.Of(calculation.Page);
        var text = new StringBuilder($"\n{Escaped(page.Summary)}\n");
        foreach (var (title, part) in page.Parts)
            text.Append($"\n**{title}** {Escaped(part)}\n");
        text.Append("\n| takes | what may stand there | meaning |\n| --- | --- | --- |\n");
        foreach (var (path, input) in Inputs(calculation.Takes))
            text.Append(
                $"| `{path}`{(input.Optional ? "?" : "")} | {Cell(input.Kind + Default(input))} | {Cell(input.Meaning)} |\n"
            );
        text.Append("\n| gives | unit or kind | meaning |\n| --- | --- | --- |\n");
        foreach (var output in calculation.Gives)
            text.Append($"| `{output.Name}` | {Cell(output.Kind)} | {Cell(output.Meaning)} |\n");
        return text.Append('\n').ToString();
    }

    /// <summary>For programs.</summary>
    public static string Json(Calculation calculation)
    {
        var page = PageText.Of(calculation.Page);
        var json = new JsonObject
        {
            ["name"] = calculation.Name,
            ["chapter"] = calculation.Group,
            ["line"] = calculation.Line,
            ["takes"] = Takes(calculation.Takes),
            ["gives"] = new JsonArray([
                .. calculation.Gives.Select(o => new JsonObject
                {
                    ["name"] = o.Name,
                    ["kind"] = o.Kind,
                    ["meaning"] = o.Meaning,
                }),
            ]),
        };
        foreach (var (title, part) in page.Parts)
            json[title == "Valid when" ? "validWhen" : title.ToLowerInvariant()] = part;
        return json.ToJsonString(Readable) + "\n";
    }

    private static JsonArray Takes(IEnumerable<Input> inputs) =>
        [
            .. inputs.Select(i =>
            {
                var json = new JsonObject
                {
                    ["name"] = i.Name,
                    ["kind"] = i.Kind,
                    ["meaning"] = i.Meaning,
                    ["optional"] = i.Optional,
                };
                if (i.Default is not null)
                    json["default"] = i.Default;
                if (i.Fields.Count > 0)
                    json["fields"] = Takes(i.Fields);
                return json;
            }),
        ];

    private static IEnumerable<(string Path, Input Input)> Inputs(IEnumerable<Input> inputs, string before = "") =>
        inputs.SelectMany(i => Inputs(i.Fields, $"{before}{i.Name}.").Prepend((before + i.Name, i)));

    private static string Default(Input input) => input.Default is { } value ? $"; left out: {value}" : "";

    private static string Escaped(string text) => text.Replace("<", "&lt;").Replace("*", "\\*");

    private static string Cell(string text) => Escaped(text).Replace("|", "\\|");

    private static string Wrapped(string text)
    {
        var lines = new StringBuilder();
        var length = 0;
        foreach (var word in text.Split(' '))
        {
            var fits = length > 0 && length + word.Length < 96;
            lines
                .Append(
                    fits ? " "
                    : length > 0 ? "\n  "
                    : "  "
                )
                .Append(word);
            length = fits ? length + 1 + word.Length : word.Length;
        }
        return lines.Append('\n').ToString();
    }
}
