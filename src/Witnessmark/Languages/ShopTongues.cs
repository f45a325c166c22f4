using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Languages;

/// <summary>The languages that papers and answers can be had in: English, and those whose catalogue lies inside the program.</summary>
internal static class ShopTongues
{
    private static readonly Lazy<Tongue> German = new(() => Tongue.German(new(PoFile.Read(Catalogue("de")))));

    /// <summary>The codes, for options and messages.</summary>
    public static string[] Codes => [.. Tongue.All.Select(l => l.Code)];

    /// <summary>The language of a code; null where there is none.</summary>
    public static Tongue? Named(string code) =>
        code switch
        {
            "en" => Tongue.English,
            "de" => German.Value,
            _ => null,
        };

    /// <summary>Language and units that were asked for, else the workshop's; null where one of them is not there.</summary>
    public static Tongue? Of(string? code, string? units, Workshop workshop) =>
        UnitSystems.Named(units ?? workshop.Units) is { } system
            ? Named(code ?? workshop.Language)?.With(system)
            : null;

    private static string Catalogue(string code)
    {
        using var stream = typeof(ShopTongues).Assembly.GetManifestResourceStream($"{code}.po")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
