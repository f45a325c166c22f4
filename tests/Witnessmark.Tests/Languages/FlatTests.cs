namespace Witnessmark.Tests.Languages;

/// <summary>Where a sentence becomes plain English on its way to people, it is not translated: these places are known, and there are no others.</summary>
public class FlatTests
{
    // what is written into entries, kept as data, or decides by the English text
    private static readonly string[] KnownInClient = [];

    private static readonly string[] KnownInPaper = [];

    private static readonly string[] KnownInBench = [];

    [Fact]
    public void No_sentence_becomes_plain_English_on_its_way_to_a_screen() => Same(KnownInClient, "Witnessmark.Client");

    [Fact]
    public void No_sentence_becomes_plain_English_on_its_way_to_a_paper() => Same(KnownInPaper, "Witnessmark.Paper");

    [Fact]
    public void No_sentence_of_the_bench_is_put_together_from_plain_English() => Same(KnownInBench, "Witnessmark.Bench");

    private static void Same(string[] known, string assembly) =>
        Assert.Equal(
            known.Order(StringComparer.Ordinal),
            SpokenIn.Flattens(Path.Combine(AppContext.BaseDirectory, $"{assembly}.dll"))
        );
}
