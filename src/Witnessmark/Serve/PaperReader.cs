using Witnessmark.Handbook.Quantities;
using Witnessmark.Languages;

namespace Witnessmark.Serve;

/// <summary>For whom a paper is asked, <c>?language=de&amp;units=us</c>; what is left out is as the workshop says.</summary>
/// <param name="Language">Code of a language.</param>
/// <param name="Units">Word of a system of units.</param>
public sealed record PaperReader(string? Language, string? Units)
{
    /// <summary>Puts the reader together, or says what is not there.</summary>
    internal IResult? Refused(ServedShop shop, out Tongue tongue)
    {
        var asked = ShopTongues.Of(Language, Units, shop.Bench.Workshop);
        tongue = asked ?? Tongue.English;
        return asked is not null ? null
            : Language is not null && ShopTongues.Named(Language) is null
                ? Failure.Said(
                    400,
                    $"There is no language \"{Language}\" here: {string.Join(" and ", ShopTongues.Codes)} are."
                )
            : Failure.Said(400, $"There are no units \"{Units}\" here: {string.Join(", ", UnitSystems.Words)} are.");
    }
}
