using System.CommandLine;

namespace Witnessmark.Calc;

/// <summary><c>witnessmark calc</c>: the handbook on the command line.</summary>
public static class CalcCommand
{
    /// <summary>The command with its sub-commands.</summary>
    public static Command Create()
    {
        var name = new Argument<string>("NAME") { Description = "name of the calculation, see calc list" };
        var file = new Argument<string>("FILE") { Description = "the request as JSON, or - for standard input" };
        var calc = new Command("calc", "Ask a calculation of the handbook.") { name, file };
        calc.SetAction(parsed => Ask.Run(parsed.GetRequiredValue(name), parsed.GetRequiredValue(file)));
        calc.Subcommands.Add(List());
        calc.Subcommands.Add(Describe());
        calc.Subcommands.Add(Check());
        calc.Subcommands.Add(Stream());
        return calc;
    }

    private static Command List()
    {
        var list = new Command("list", "Name, one line and source of every calculation.");
        list.SetAction(_ => Calc.List.Run(Console.Out));
        return list;
    }

    private static Command Describe()
    {
        var name = new Argument<string>("NAME") { Description = "name of the calculation" };
        var json = new Option<bool>("--json") { Description = "as JSON" };
        var markdown = new Option<bool>("--markdown") { Description = "as the block of its documentation page" };
        var page = new Option<string?>("--page") { Description = "put that block into this page" };
        var describe = new Command("describe", "Inputs, outputs, formula, source and validity of one calculation.")
        {
            name,
            json,
            markdown,
            page,
        };
        describe.SetAction(parsed =>
            Calc.Describe.Run(
                parsed.GetRequiredValue(name),
                parsed.GetValue(json) ? Description.Json
                    : parsed.GetValue(markdown) ? Description.Markdown
                    : Description.Text,
                parsed.GetValue(page)
            )
        );
        return describe;
    }

    private static Command Check()
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "files of check cases",
            Arity = ArgumentArity.OneOrMore,
        };
        var check = new Command("check", "Run check cases and print what differs.") { files };
        check.SetAction(parsed => Calc.Check.Run(parsed.GetRequiredValue(files), Console.Out, Console.Error));
        return check;
    }

    private static Command Stream()
    {
        var stream = new Command("stream", "JSON lines in {id, calculation, given}, JSON lines out.");
        stream.SetAction(_ =>
        {
            using var input = Console.OpenStandardInput();
            using var output = Console.OpenStandardOutput();
            return Batch.Run(input, output);
        });
        return stream;
    }
}
