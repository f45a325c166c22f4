namespace Witnessmark.Tests.Languages;

/// <summary>What the book of the door tells is kept in English; whoever reads it gets it in their language.</summary>
public class WrittenInBookTests
{
    // the server writes them and the client knows them again: no compiler sees both
    [Fact]
    public void Every_line_of_the_book_is_known_again()
    {
        var written = Keys("witnessmark", "BookLine.");
        Assert.NotEmpty(written);
        Assert.Empty(written.Except(Keys("Witnessmark.Client", "WrittenInBook.")));
    }

    [Fact]
    public void Nothing_is_known_that_the_book_does_not_tell() =>
        Assert.Empty(Keys("Witnessmark.Client", "WrittenInBook.").Except(Keys("witnessmark", "BookLine.")));

    private static string[] Keys(string program, string where) =>
        [
            .. SpokenIn
                .Assembly(Path.Combine(AppContext.BaseDirectory, $"{program}.dll"))
                .Where(s => s.Where.StartsWith(where, StringComparison.Ordinal))
                .Select(s => s.Key),
        ];
}
