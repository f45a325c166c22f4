namespace Witnessmark.Bench.Toml;

/// <summary>
/// A mistake in a file, for whoever reads it. The reader of the files notes it in English, as the command line prints it; what can be met on a
/// screen, where a figure is written down or a shop is set up, is known again here.
/// </summary>
public static class WrittenMistake
{
    // stands for any argument
    private const string X = "";

    // stands for a key, or for what somebody wrote in the file: neither is a word of a language, though the catalogue may have one like it
    private static readonly AsItStands N = new(X);

    private static readonly Retold Texts = new([.. Tables, .. Figures, .. Shops, .. InFigures, .. InShops], Whys);

    /// <summary>What stands there and what would be right, without the place.</summary>
    public static Sentence Of(Mistake mistake) =>
        $"{Texts.Of(mistake.Found)}; right would be {Texts.Of(mistake.Right)}";

    /// <summary>The same with the place in the file.</summary>
    public static Sentence At(Mistake mistake) =>
        $"{mistake.File}:{mistake.Line}:{mistake.Column}: {Texts.Of(mistake.Found)}; right would be {Texts.Of(mistake.Right)}";

    /// <summary>What any table may have wrong.</summary>
    private static IEnumerable<Sentence> Tables =>
        [
            // before those that a part of them is
            $"\"{N}\": \"{N}\" is not a unit",
            $"\"{N}\": \"{N}\" is not a number",
            $"\"{N}\" is missing",
            $"empty text",
            $"an empty list",
            $"the text \"{N}\"",
            $"the number {X}",
            $"unknown key \"{N}\"",
            $"\"{N}\" a second time",
            $"\"{N}\" has the wrong kind of unit",
            $"\"{N}\" is not a unit",
            $"\"{N}\": {X}",
            $"{N} = text in quotes",
            $"{N} = text such as \"{N}\"",
            $"{N} = text with a unit, e.g. \"{N}\"",
            $"{N} = a number in quotes, e.g. \"0.5\" or \"4 %\"",
            $"{N} = a whole number from {X} to {X}",
            $"{N} = a list such as [\"one\", \"two\"]",
            $"{N} = a unit such as \"mm\"",
            $"one of {N}",
            $"none here",
            $"at least one",
            $"each once",
        ];

    /// <summary>What a figure may have wrong.</summary>
    private static IEnumerable<Sentence> Figures =>
        [
            $"\"{N}\" beside \"{N}\"",
            $"a figure without a number",
            $"\"{N}\" is not a torque",
            $"\"{N}\": the ends are swapped or equal",
            $"\"{N}\" measures something else than {X}",
            $"\"{N}\" is {X}, not {X} (which is {X})",
            $"document \"{N}\", which the sheet does not have",
            $"\"maker: {N}\" without a place in it",
            $"\"law: {N}\" without jurisdiction or clause",
        ];

    /// <summary>What would be right there.</summary>
    private static IEnumerable<Sentence> InFigures =>
        [
            $"one of {N} only (two ends are a range: range = \"13 to 32 mm\")",
            $"one of {N}, such as range = \"13 to 32 mm\"",
            $"the smaller one first",
            $"tolerance = text such as \"15 kPa\" or \"10 %\", more than zero",
            $"the same as {X} in another unit",
            $"the same in another unit",
            $"two that agree within their printed digits: look again which one is misprinted",
            $"a table [documents.{N}] in the sheet",
            $"\"law: JURISDICTION, CLAUSE\"",
            $"\"maker: DOCUMENT PLACE\", \"law: JURISDICTION, CLAUSE\", \"standard: NUMBER\", \"shop\" or \"common practice\"",
            $"thread and property class, e.g. \"M8 8.8\" or \"M18x1.5 10.9\"; threads {X}, alone or with a fine pitch of ISO 261, e.g. \"M12x1.25\"",
        ];

    /// <summary>What a new shop may have wrong.</summary>
    private static IEnumerable<Sentence> Shops =>
        [
            $"the ends are swapped or equal",
            $"a torque tool without its range",
            $"an interval without a beginning",
            $"\"{N}\" is not one of the people",
            $"\"{N}\" ({X} signs)",
            $"{N} does not say \"{N}\", on which point \"{N}\" hangs",
            $"there is no {X} \"{N}\"",
        ];

    /// <summary>What would be right there.</summary>
    private static IEnumerable<Sentence> InShops =>
        [
            $"from the smaller one, to the larger one",
            $"a share of the setting such as \"4 %\"",
            $"zero or more",
            $"calendar months such as \"12 months\", or \"never\"",
            $"checked = 2026-03-31 beside it",
            $"a code of ISO 3166 in capital letters: \"DE\", or with its part \"US-MD\"",
            $"17 digits and capital letters without I, O and Q",
            $"under [facts] {N}",
        ];

    /// <summary>Why a quantity cannot be read.</summary>
    private static IEnumerable<Sentence> Whys =>
        [
            $"it does not begin with a number",
            $"one number is needed",
            $"two numbers with \"to\" between them are needed",
            $"the number cannot be read",
            $"the number is too large",
            $"the unit is missing",
            $"\"{N}\" is not a number",
        ];
}
