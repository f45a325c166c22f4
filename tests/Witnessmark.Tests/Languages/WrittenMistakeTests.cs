using Witnessmark.Bench.Figures;
using Witnessmark.Bench.OwnShop;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Tests.Languages;

/// <summary>What is wrong with a figure or a shop that somebody gives on a screen is said in their language.</summary>
public class WrittenMistakeTests
{
    private static readonly Tongue German = Tongue.German(
        new(PoFile.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "languages", "de.po"))))
    );

    [Theory]
    [InlineData(
        "range",
        "32 to 13 mm",
        "shop",
        "„32 to 13 mm“: die Grenzen sind vertauscht oder gleich; richtig wäre die kleinere zuerst"
    )]
    [InlineData("min", "mm", "shop", "„mm“: es beginnt nicht mit einer Zahl; richtig wäre min = Text wie \"1.5 mm\"")]
    [InlineData("min", "1 mn", "shop", "„1 mn“: „mn“ ist keine Einheit; richtig wäre min = Text wie \"1.5 mm\"")]
    [InlineData("torque", "5 mm", "shop", "„5 mm“ ist kein Drehmoment; richtig wäre torque = Text wie \"110 N·m\"")]
    [InlineData(
        "min",
        "1 mm",
        "law: DE",
        "„law: DE“ ohne Rechtsgebiet oder Stelle; richtig wäre \"law: RECHTSGEBIET, STELLE\""
    )]
    [InlineData("min", "1 mm", "maker: book", "„maker: book“ ohne Stelle darin; richtig wäre \"maker: book p. 87\"")]
    [InlineData("min", "1 mm", "maker: boat p. 1", "Dokument „boat“, das das Blatt nicht hat; richtig wäre \"book\"")]
    [InlineData(
        "max",
        "",
        "shop",
        "ein Sollwert ohne Zahl; richtig wäre eine von range, min, max, target, torque, amount, z. B. range = \"13 to 32 mm\""
    )]
    public void A_figure_that_cannot_be_taken(string demand, string printed, string origin, string german)
    {
        var (figure, why) = new FigureDraft("chain.slack", demand, printed, origin).Read(["book"]);
        Assert.Null(figure);
        Assert.Equal(german, why!.In(German));
    }

    [Fact]
    public void A_shop_that_cannot_be_set_up()
    {
        var shop = new NewShop("Weir", ["Ada Brook"], "Ada Brook") { Jurisdiction = "Britain" };
        var (_, mistakes) = NewShopFiles.Of(shop, [], []);
        var mistake = Assert.Single(mistakes, m => m.Found.Contains("Britain"));
        Assert.Equal(
            "\"Britain\"; richtig wäre ein Code nach ISO 3166 in Großbuchstaben: \"DE\", oder mit seinem Teil \"US-MD\"",
            WrittenMistake.Of(mistake).In(German)
        );
    }

    [Theory]
    [InlineData("text = text in quotes", "text = Text in Anführungszeichen")]
    [InlineData("one of torque", "eine von torque")]
    [InlineData("unknown key \"torque\"", "unbekannter Schlüssel „torque“")]
    [InlineData("\"text\" is missing", "„text“ fehlt")]
    public void A_key_that_is_a_word_of_the_catalogue_too_stays_a_key(string written, string german) =>
        Assert.Equal($"x; richtig wäre {german}", WrittenMistake.Of(new("shop.toml", 1, 1, "x", written)).In(German));

    [Fact]
    public void English_is_as_the_command_line_prints_it()
    {
        var mistake = new Mistake("shop.toml", 6, 16, "\"Germany\"", "a code");
        Assert.Equal($"{mistake}", WrittenMistake.At(mistake).ToString());
    }
}
