using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Tests.Tyres;

public class TyreMarkingTests
{
    private static MarkedTyre Tyre(string marking) => TyreMarking.Read(marking).Certain;

    public static IEnumerable<TheoryDataRow<string, string>> Loads => Rows("load-index.csv");

    public static IEnumerable<TheoryDataRow<string, string>> Symbols => Rows("speed-symbols.csv");

    public static IEnumerable<TheoryDataRow<string, string>> Rims => Rows("rim-diameters.csv");

    private static IEnumerable<TheoryDataRow<string, string>> Rows(string table) =>
        PublishedRows.Of(table).Select(r => new TheoryDataRow<string, string>(r[0], r[1]));

    [Theory]
    [MemberData(nameof(Loads))]
    public void Load_of_every_index_of_the_table(string index, string kilograms) =>
        Assert.Equal(PublishedRows.Number(kilograms) * 1000, Tyre($"130/70-12 {index}L").Load!.Value.Grams, 1e-9);

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Speed_of_every_symbol_of_the_table(string symbol, string speed) =>
        Assert.Equal(PublishedRows.Number(speed), Tyre($"130/70-12 62{symbol}").Speed!.Value.KilometresPerHour);

    [Theory]
    [MemberData(nameof(Rims))]
    public void Diameter_of_every_rim_code_of_the_table_is_in_whole_millimetres(string code, string diameter)
    {
        var d = Tyre($"130/70-{code} M/C").RimDiameter!.Value.Millimetres;
        Assert.Equal(PublishedRows.Number(diameter), d);
        Assert.Equal(25.4 * PublishedRows.Number(code), d, 0.5);
    }

    // UNECE R75, D = d + 2·H, recomputed
    [Theory]
    [InlineData("120/70 ZR 17 M/C", 600)]
    [InlineData("180/55 ZR 17 M/C", 630)]
    [InlineData("160/60 ZR 17 M/C", 624)]
    [InlineData("150/70 R 17 M/C", 642)]
    [InlineData("200/55 ZR 17 M/C", 652)]
    [InlineData("90/90-21 M/C", 695)]
    [InlineData("120/70-12", 473)]
    [InlineData("120/100-18 M/C", 697)]
    public void Design_diameter(string marking, double diameter) =>
        Assert.Equal(diameter, Tyre(marking).OverallDiameter!.Value.Millimetres, 0.5);

    // Markings as printed in public guides: 180/55 ZR 17 M/C (73W), 130/70-12 62L, 120/90-18 65S, 120/90-V18, 110/80 17 54H
    [Theory]
    [InlineData("180/55 ZR 17 M/C (73W)", TyreConstruction.Radial, 17, 73, "W")]
    [InlineData("180/55ZR17M/C(73W)", TyreConstruction.Radial, 17, 73, "W")]
    [InlineData(" 180 / 55 zr 17 m/c ( 73 w ) tl rear ", TyreConstruction.Radial, 17, 73, "W")]
    [InlineData("180/55 R 17 73 W M/C", TyreConstruction.Radial, 17, 73, "W")]
    [InlineData("130/70-12 62L", TyreConstruction.Bias, 12, 62, "L")]
    [InlineData("130/70 - 12 62L REINF", TyreConstruction.Bias, 12, 62, "L")]
    [InlineData("120/90-18 65S", TyreConstruction.Bias, 18, 65, "S")]
    [InlineData("120/90-V18", TyreConstruction.Bias, 18, null, "V")]
    [InlineData("110/80 17 54H", TyreConstruction.Bias, 17, 54, "H")]
    [InlineData("130/90 B 16 M/C 73H", TyreConstruction.BeltedBias, 16, 73, "H")]
    [InlineData("150/80 VB 16 M/C 71V", TyreConstruction.BeltedBias, 16, 71, "V")]
    [InlineData("130/80 D 17 M/C 65H", TyreConstruction.Bias, 17, 65, "H")]
    [InlineData("110/80 R 19 M/C 59V", TyreConstruction.Radial, 19, 59, "V")]
    [InlineData("80/100-21 MC 51M TT", TyreConstruction.Bias, 21, 51, "M")]
    [InlineData("100/90-19", TyreConstruction.Bias, 19, null, null)]
    public void Every_way_to_write_it(
        string marking,
        TyreConstruction construction,
        int rim,
        int? index,
        string? symbol
    )
    {
        var tyre = Tyre(marking);
        Assert.Equal(
            (construction, rim, index, symbol),
            (tyre.Construction, tyre.RimCode, tyre.LoadIndex, tyre.SpeedSymbol)
        );
        Assert.Equal(index is null, tyre.Load is null);
        Assert.Equal(symbol is null, tyre.Speed is null);
    }

    [Fact]
    public void Width_and_aspect_are_read_apart()
    {
        var tyre = Tyre("80/100-21 M/C 51M");
        Assert.Equal((80, 1.0), (tyre.Width.Millimetres, tyre.Aspect.Value));
    }

    [Theory]
    [InlineData("3.00 S 18 4PR", "inches")]
    [InlineData("3.25-19", "inches")]
    [InlineData("2 3/4 - 17", "inches")]
    [InlineData("4½ x 18", "inches")]
    [InlineData("MT90B16", "letters")]
    [InlineData("mh90-21", "letters")]
    [InlineData("", "no metric marking")]
    [InlineData("a round black thing", "no metric marking")]
    [InlineData("0/70-17", "no metric marking")]
    [InlineData("1200/70-17", "no metric marking")]
    [InlineData("120/7-17", "no metric marking")]
    [InlineData("120/70", "no metric marking")]
    [InlineData("120/7017", "no metric marking")]
    [InlineData("120/70-175", "no metric marking")]
    [InlineData("120/70-1758W", "no metric marking")]
    [InlineData("120/70-17 (58W", "no metric marking")]
    [InlineData("120/70-17 58W)", "no metric marking")]
    [InlineData("120/70-17 58", "no metric marking")]
    [InlineData("120/70-17 58WW", "no metric marking")]
    [InlineData("120/70-17 58W 58W", "no metric marking")]
    [InlineData("120/70-17 58W DOT", "no metric marking")]
    [InlineData("x 120/70-17", "no metric marking")]
    [InlineData("١٢٠/٧٠-١٧", "no metric marking")] // digits of another script
    public void What_is_not_metric_is_refused_with_its_reason(string marking, string because)
    {
        var refusal = TyreMarking.Read(marking).Refusal;
        Assert.Equal("notMetric", refusal?.Key);
        Assert.Contains(because, refusal!.Because);
    }

    [Theory]
    [InlineData("120/70-7 M/C 58W", "code 7 is in the table (8 to 23)")]
    [InlineData("120/70-24 M/C 58W", "code 24")]
    [InlineData("120/70-17 M/C 15W", "Load index 15 is not in the table (10 to 100)")]
    [InlineData("120/70-17 M/C 101W", "Load index 101")]
    [InlineData("120/70-17 M/C 58X", "X is no speed symbol")]
    [InlineData("120/70 X 17 M/C", "X is no speed symbol")]
    public void What_the_tables_lack_is_refused_beside_what_holds(string marking, string because)
    {
        var answer = TyreMarking.Read(marking);
        Assert.Equal("outsideTable", answer.Refusal?.Key);
        Assert.Contains(because, answer.Refusal!.Because);
        Assert.Equal(120, answer.Value!.Width.Millimetres);
    }

    [Fact]
    public void A_rim_that_is_not_in_the_table_has_no_overall_diameter() =>
        Assert.Null(TyreMarking.Read("120/70-24 M/C").Value!.OverallDiameter);

    [Theory]
    [InlineData("180/55 ZR 17 M/C (73W)", "In brackets")]
    [InlineData("180/55 ZR 17 M/C 73W", null)]
    [InlineData("180/55 ZR 17 M/C 73V", null)]
    [InlineData("180/55 ZR 17 M/C 73Y", null)]
    [InlineData("180/55 ZR 17 M/C", "Z alone")]
    [InlineData("180/55 ZR 17 M/C 73H", "The size says Z")]
    [InlineData("150/80 VB 16 M/C 71H", "The size says V")]
    [InlineData("150/80 VB 16 M/C 71W", "The size says V")] // only Z stands for the faster letters
    [InlineData("150/80 VB 16 M/C 71V", null)]
    [InlineData("120/90-13 65S", "No M/C")]
    [InlineData("120/90-12 65S", null)]
    public void Notes(string marking, string? note)
    {
        if (note is null)
            Assert.Null(Tyre(marking).Note);
        else
            Assert.StartsWith(note, Tyre(marking).Note);
    }

    [Fact]
    public void Two_notes_stand_one_after_the_other() =>
        Assert.Matches("^In brackets.* No M/C", Tyre("180/55 ZR 17 (73W)").Note);

    [Fact]
    public void Z_alone_has_no_speed()
    {
        var tyre = Tyre("180/55 ZR 17 M/C");
        Assert.Equal("Z", tyre.SpeedSymbol);
        Assert.Null(tyre.Speed);
    }

    // Random Unicode and good markings spoiled: refused or answered, and an answer is whole
    [Fact]
    public void Whatever_is_typed_is_refused_or_answered()
    {
        var answered = 0;
        foreach (
            var text in Scrawl.Of(20_000, 75, "180/55 ZR 17 M/C (73W)", "130/70-12 62L", "120/90-V18", "3.00 S 18 4PR")
        )
        {
            var answer = TyreMarking.Read(text);
            Assert.True(answer.Refusal is null or { Key: "notMetric" or "outsideTable" });
            if (!answer.Holds)
                continue;
            answered++;
            Assert.InRange(answer.Certain.OverallDiameter!.Value.Millimetres, 200, 5000);
            Assert.Contains(answer.Certain.RimCode.ToString(), text);
        }
        Assert.InRange(answered, 100, 10_000);
    }
}
