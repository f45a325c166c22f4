using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

public class EntryJsonTests
{
    private static readonly Entry Full = Entries.Sealed(
        Made.Draft("a1", new Dictionary<string, int> { ["tablet/1"] = 4, ["phone/2"] = 1 }) with
        {
            Strikes = "a0",
        },
        "bench",
        1,
        2,
        new string('0', 64)
    );

    [Fact]
    public void What_is_written_is_read_again()
    {
        Assert.Equal(EntryJson.Write(Full).GetRawText(), EntryJson.Text(Full));
        var again = EntryJson.Read(EntryJson.Write(Full));
        Assert.Equal(CanonicalJson.Of(EntryJson.Write(Full)), CanonicalJson.Of(EntryJson.Write(again)));
        Assert.Equal(Full.Hash, EntryHash.Of(again));
        Assert.Equal(4, again.Covers!["tablet/1"]);
    }

    [Fact]
    public void What_is_null_is_absent()
    {
        var names = EntryJson.Write(Made.Chain("bench", 1)[0]).EnumerateObject().Select(m => m.Name);
        Assert.Equal(["id", "shop", "job", "device", "epoch", "seq", "kind", "body", "at", "by", "hash"], names);
    }

    // own derivation: SHA-256 of the canonical text below, computed with coreutils' sha256sum
    [Fact]
    public void The_hash_is_that_of_the_canonical_text()
    {
        const string text =
            """{"at":"2026-03-02T09:15:00Z","body":{"text":"note bench-1"},"by":"Ines","device":"bench","epoch":1,"id":"bench-1","job":"412","kind":"note","seq":1,"shop":"harrow-lane"}""";
        var entry = Made.Chain("bench", 1)[0];
        Assert.Equal(text, CanonicalJson.Of(Without(EntryJson.Write(entry), "hash")));
        Assert.Equal("f4ee6dc0e153478f36d0fa61fd047e5872d7da98478e9a4a730be8307dba183f", entry.Hash);
    }

    [Theory]
    [InlineData("[]", "object")]
    [InlineData("""{"id":"a"}""", "\"shop\" is missing")]
    [InlineData("""{"id":"a","colour":"red"}""", "\"colour\" is no field")]
    [InlineData("""{"id":"a","id":"b"}""", "\"id\" stands twice")]
    public void A_malformed_entry_says_what_is_wrong(string json, string says) =>
        Assert.Contains(says, Assert.Throws<MalformedEntry>(() => EntryJson.Read(Made.Json(json))).Message);

    [Theory]
    [InlineData("id", "\"\"")]
    [InlineData("id", "7")]
    [InlineData("seq", "0")]
    [InlineData("seq", "1.5")]
    [InlineData("seq", "3000000000")]
    [InlineData("epoch", "\"1\"")]
    [InlineData("body", "\"text\"")]
    [InlineData("body", """{"raw":0.1}""")]
    [InlineData("covers", """{"tablet/1":0}""")]
    [InlineData("covers", """{"tablet/1":1,"tablet/1":2}""")]
    [InlineData("strikes", "null")]
    [InlineData("by", "\"\\ud800\"")]
    public void A_field_out_of_range_is_named(string field, string value)
    {
        var whole = EntryJson.Write(Full).EnumerateObject().Where(m => m.Name != field);
        var json = string.Join(',', whole.Select(m => $"\"{m.Name}\":{m.Value.GetRawText()}"));
        var fault = Assert.Throws<MalformedEntry>(() => EntryJson.Read(Made.Json($"{{{json},\"{field}\":{value}}}")));
        Assert.Contains($"\"{field}", fault.Message);
    }

    [Fact]
    public void The_body_outlives_the_document_it_was_read_from()
    {
        Entry read;
        using (var document = JsonDocument.Parse(EntryJson.Write(Full).GetRawText()))
            read = EntryJson.Read(document.RootElement);
        Assert.Equal("note a1", read.Body.GetProperty("text").GetString());
    }

    [Fact]
    public void Each_body_has_the_agreed_form()
    {
        PlannedPoint[] points = [new("chain-slack", "service")];
        Assert.Equal(
            """{"machine":"fell-640-0412","sheet":"fell-640","revision":3,"purpose":"service","points":[{"point":"chain-slack","why":"service"}],"promised":"Friday","vouching":true,"settling":true}""",
            EntryBody.Arrival("fell-640-0412", "fell-640", 3, "service", points, "Friday").GetRawText()
        );
        Assert.Equal(
            """{"point":"chain-slack","raw":["75 mm","25 mm"],"places":["low","high"],"with":"steel-rule","sure":true}""",
            EntryBody.Reading("chain-slack", ["75 mm", "25 mm"], ["low", "high"], "steel-rule", true).GetRawText()
        );
        Assert.Equal("""{"point":"p","raw":["2 mm"]}""", EntryBody.Reading("p", ["2 mm"]).GetRawText());
        Assert.Equal(
            """{"point":"p","left":"0.13","right":"-0.6"}""",
            EntryBody.SideTurns("p", "0.13", "-0.6").GetRawText()
        );
        Assert.Equal("""{"point":"p","turns":"2"}""", EntryBody.Turns("p", "2").GetRawText());
        Assert.Equal("""{"point":"p","added":"0.28 L"}""", EntryBody.Added("p", "0.28 L").GetRawText());
        Assert.Equal("""{"point":"p","did":"greased"}""", EntryBody.Did("p", "greased").GetRawText());
        Assert.Equal("""{"point":"p"}""", EntryBody.Mark("p").GetRawText());
        Assert.Equal(
            """{"point":"p","why":"worn, told the owner"}""",
            EntryBody.Left("p", "worn, told the owner").GetRawText()
        );
        Assert.Equal("""{"text":"rattles"}""", EntryBody.Note(null, "rattles").GetRawText());
        Assert.Equal("""{"why":"wrong wheel"}""", EntryBody.Strike("wrong wheel").GetRawText());
        Assert.Equal("""{"name":"Ines"}""", EntryBody.Release("Ines").GetRawText());
    }

    [Fact]
    public void What_is_given_at_a_point_has_the_agreed_form()
    {
        Assert.Equal(
            """{"point":"p","key":"k","demand":"torque","printed":"98 N·m","origin":"maker: manual p. 93","tolerance":"5 %","when":"dry","document":{"name":"manual","title":"Fell 640 manual","edition":"1"}}""",
            EntryBody
                .Figure(
                    "p",
                    new("k", "torque", "98 N·m", "maker: manual p. 93") { Tolerance = "5 %", When = "dry" },
                    new("manual", "Fell 640 manual", "1")
                )
                .GetRawText()
        );
        Assert.Equal(
            """{"point":"p","key":"k","demand":"range","printed":"0 to 1","origin":"shop","unit":"1","also":"x","bolt":"M8 8.8"}""",
            EntryBody
                .Figure(
                    "p",
                    new("k", "range", "0 to 1", "shop")
                    {
                        Unit = "1",
                        Also = "x",
                        Bolt = "M8 8.8",
                    }
                )
                .GetRawText()
        );
        Assert.Equal(
            """{"point":"p","name":"Ines","figure":"max 2 mm, shop"}""",
            EntryBody.Vouch("p", "Ines", "max 2 mm, shop").GetRawText()
        );
        Assert.Equal(
            """{"point":"p","figure":"k","sha256":"ab","type":"image/jpeg","width":3,"height":2,"bytes":9,"shows":"page 93"}""",
            EntryBody.Photograph("p", "k", new("ab", 3, 2, 9), "page 93").GetRawText()
        );
        Assert.StartsWith(
            """{"sha256":""",
            EntryBody.Photograph(null, null, new("ab", 3, 2, 9), "the left side").GetRawText()
        );
    }

    private static JsonElement Without(JsonElement json, string name) =>
        Made.Json(
            "{"
                + string.Join(
                    ',',
                    json.EnumerateObject()
                        .Where(m => m.Name != name)
                        .Select(m => $"\"{m.Name}\":{m.Value.GetRawText()}")
                )
                + "}"
        );
}
