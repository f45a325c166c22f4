namespace Witnessmark.Bench.Judging;

/// <summary>Things that are seen to be right or not.</summary>
internal static class SeenJudge
{
    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        var things = judged.Point.Reading.Places;
        if (judged.Raw.Count != things.Count)
            return (
                null,
                $"{judged.Raw.Count} answers for {things.Count} things to be seen. Allowed: one \"yes\" or \"no\" for each."
            );
        if (judged.Raw.FirstOrDefault(r => r is not ("yes" or "no")) is { } other)
            return (null, $"\"{other}\" is no answer. Allowed: \"yes\" or \"no\".");
        var wrong = things.Where((_, i) => judged.Raw[i] == "no").ToArray();
        return wrong.Length == 0
            ? (
                Judge.Plain(VerdictWord.Inside, $"seen, right", $"Seen and right", $"{Sentence.List(things, "; ")}."),
                null
            )
            : (
                Judge.Plain(
                    VerdictWord.Outside,
                    $"not right: {Sentence.List(wrong, "; ")}",
                    wrong.Length == 1 ? (Sentence)$"Not right" : (Sentence)$"{wrong.Length} things not right",
                    $"{Sentence.List(wrong, "; ")}."
                ),
                null
            );
    }
}
