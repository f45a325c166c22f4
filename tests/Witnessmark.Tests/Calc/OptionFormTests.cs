using Witnessmark.Calc;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Tests.Calc;

public class OptionFormTests
{
    public static TheoryData<string> Names => [.. Calculations.All.Select(c => c.Name)];

    [Fact]
    public void Describe_shows_how_a_request_is_written_as_options()
    {
        var said = RealProgram.Run("", "calc", "describe", "chain-adjustment").Output.ReplaceLineEndings("\n");
        Assert.Contains(
            "\nAs options\n  witnessmark calc chain-adjustment\n      --trials turns=1,slack=1mm  (once for each)\n",
            said
        );
        Assert.Contains("\n      [--limit.min 1mm]\n", said);
        Assert.Contains("\n      [--flats-per-turn 1]\n", said);
    }

    // the form is held against the reader of options itself, for every calculation
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_option_that_is_shown_is_one(string name)
    {
        var calculation = Calculations.Named(name)!;
        var lines = OptionForm.Lines(calculation).ToArray();
        var words = lines
            .Select(l => l.Split("  (")[0].Trim('[', ']'))
            .SelectMany(l => l.Split(' ', 2))
            .Select(w => w.Trim('\''));
        var request = Options.Request(calculation.Takes, [.. words]);
        Assert.Equal(calculation.Takes.Select(i => i.Name), request.Select(p => p.Key));
        var needed = calculation.Takes.Where(i => !i.Optional).Select(i => Options.Kebab(i.Name)).ToArray();
        foreach (var key in needed)
            Assert.Contains(
                lines,
                l =>
                    l.StartsWith($"--{key}", StringComparison.Ordinal)
                    || l.StartsWith($"[--{key}.", StringComparison.Ordinal)
            );
    }
}
