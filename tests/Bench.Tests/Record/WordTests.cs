using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

public sealed class WordTests
{
    [Fact]
    public void An_entry_counts_by_the_word_of_whom_it_names()
    {
        Same(
            new(EntryKind.Dropped, "Ines", ["front-pads"]),
            Of(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new", "Ines"))
        );
        Same(
            new(EntryKind.Vouch, "Ines", ["chain-slack", "max 2 mm, shop"]),
            Of(EntryKind.Vouch, EntryBody.Vouch("chain-slack", "Ines", "max 2 mm, shop"))
        );
        Same(
            new(EntryKind.CampaignLeft, "Bram", ["26X-011"]),
            Of(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-011", "goes on a trailer"))
        );
    }

    [Fact]
    public void What_names_nobody_counts_by_nobodys()
    {
        Assert.Null(Of(EntryKind.Dropped, EntryBody.Dropped("keys", "only one exists")));
        Assert.Null(Of(EntryKind.Planned, EntryBody.Planned("keys", "found")));
        Assert.Null(Of(EntryKind.Vouch, JsonDocument.Parse("""["no", "object"]""").RootElement));
        Assert.Null(Of(EntryKind.Dropped, JsonDocument.Parse("""{"point":"keys","lead":"\ud800"}""").RootElement));
        Assert.Null(Of(EntryKind.Dropped, JsonDocument.Parse("""{"point":"keys","lead":"a\u0000b"}""").RootElement));
    }

    [Fact]
    public void What_the_shop_gave_for_it_stands_in_the_body()
    {
        JsonElement[] with =
        [
            EntryBody.Dropped("p", "w", "Ines", "given"),
            EntryBody.Vouch("p", "Ines", "f", "given"),
            EntryBody.CampaignLeft("1", "w", "given"),
            EntryBody.Release("Ines", confirmed: "given"),
        ];
        Assert.All(with, body => Assert.Equal("given", RawText.In(body, Word.Key)));
        Assert.False(EntryBody.Dropped("p", "w", "Ines").TryGetProperty(Word.Key, out _));
    }

    private static void Same(Word expected, Word? word) =>
        Assert.Equal(
            (expected.Kind, expected.Name, string.Join('|', expected.About)),
            (word!.Kind, word.Name, string.Join('|', word.About))
        );

    private static Word? Of(string kind, JsonElement body) => Word.Of(kind, "Bram", body);
}
