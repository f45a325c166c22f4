using System.Text.RegularExpressions;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary>How a request of a calculation is written as options, with an example in each place; what may be left out stands in brackets.</summary>
public static partial class OptionForm
{
    /// <summary>One option in each line, after the program's name and the calculation's.</summary>
    public static IEnumerable<string> Lines(Calculation calculation) =>
        calculation.Takes.SelectMany(i => Lines(i, "", i.Optional));

    private static IEnumerable<string> Lines(Input input, string before, bool optional)
    {
        var name = before + Options.Kebab(input.Name);
        if (input is { Fields.Count: > 0, Shape: not InputShape.List })
            return input.Fields.SelectMany(f => Lines(f, $"{name}.", optional || f.Optional));
        var option = input.Shape == InputShape.Truth ? $"--{name}" : $"--{name} {Quoted(Example(input))}";
        var again = input.Shape == InputShape.List ? "  (once for each)" : "";
        return [(optional ? $"[{option}]" : option) + again];
    }

    private static string Example(Input input) =>
        input is { Fields.Count: > 0 }
            ? string.Join(',', input.Fields.Where(f => !f.Optional || f.Fields.Count == 0).Select(Inside))
            : Value(input.Element ?? input);

    private static string Inside(Input field) => $"{Options.Kebab(field.Name)}={Value(field)}";

    private static string Value(Input input) =>
        input.Choices.Count > 0 ? input.Choices[0]
        : Said().Match(input.Kind) is { Success: true } said ? said.Groups[1].Value.Replace(" ", "")
        : input.Shape switch
        {
            InputShape.Number => "1",
            InputShape.Truth => "true",
            InputShape.Names => """{"name":1}""",
            _ => "text",
        };

    private static string Quoted(string value) => value.Any(c => c is ' ' or '"' or '{') ? $"'{value}'" : value;

    [GeneratedRegex("e\\.g\\. \"([^\"]*)\"")]
    private static partial Regex Said();
}
