using System.CommandLine;
using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Languages;

/// <summary><c>--language</c> and <c>--units</c>: for whom a paper is written, where that is not as the workshop says.</summary>
internal sealed class ReaderOptions
{
    private readonly Option<string?> language = new("--language")
    {
        Description = "en or de; left out: as shop.toml says.",
    };

    private readonly Option<string?> units = new("--units")
    {
        Description = "metric, us or as-written; left out: as shop.toml says.",
    };

    public ReaderOptions()
    {
        language.AcceptOnlyFromAmong(ShopTongues.Codes);
        units.AcceptOnlyFromAmong([.. UnitSystems.Words]);
    }

    /// <summary>Puts both on a command.</summary>
    public void On(Command command)
    {
        command.Add(language);
        command.Add(units);
    }

    /// <summary>The reader that was asked for, once the workshop is known.</summary>
    public Func<Workshop, Tongue> In(ParseResult parsed)
    {
        var (code, word) = (parsed.GetValue(language), parsed.GetValue(units));
        return workshop => ShopTongues.Of(code, word, workshop) ?? Tongue.English;
    }
}
