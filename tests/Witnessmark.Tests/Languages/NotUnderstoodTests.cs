using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Tests.Languages;

/// <summary>Why an entry says nothing to this program is said to whoever looks at the job.</summary>
public class NotUnderstoodTests
{
    private static readonly Tongue German = Tongue.German(
        new(PoFile.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "languages", "de.po"))))
    );

    [Theory]
    [InlineData("smell", "{}", "die Art „smell“ kennt dieses Programm nicht")]
    [InlineData("campaign", "{}", "number: Text fehlt")]
    [InlineData("release", """{"name":"Ines Tallow","ofTwo":3}""", "ofTwo: wahr oder falsch fehlt")]
    [InlineData("note", "{}", "text: Text fehlt")] // the key stays what it is
    [InlineData("parts", """{"arrive":"soon"}""", "arrive: „soon“ ist kein Zeitpunkt wie 2026-11-27T16:00")]
    public void An_entry_that_is_not_understood(string kind, string body, string german)
    {
        using var json = JsonDocument.Parse(body);
        var entry = Entries.Sealed(
            new("d-1", "shop", "1", kind, json.RootElement, null, null, "2026-11-28T09:00:00.000+00:00", "Bo"),
            "d",
            1,
            1,
            null
        );
        var (fact, why) = Facts.Of(entry);
        Assert.Null(fact);
        Assert.Equal(german, why!.In(German));
    }

    [Fact]
    public void Every_kind_of_entry_is_said_in_words_of_its_own()
    {
        var kinds = typeof(EntryKind).GetFields().Select(f => (string)f.GetValue(null)!).ToList();
        var said = kinds.Select(k => EntryKindWords.Of(k).In(German)).ToList();
        Assert.Equal(kinds.Count, said.Distinct().Count());
        Assert.DoesNotContain("ein Eintrag", said);
        Assert.Equal("ein Eintrag", EntryKindWords.Of("smell").In(German));
    }
}
