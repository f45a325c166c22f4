using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.SecondChecks;

namespace Witnessmark.Client.Bench;

/// <summary>Words of the second check.</summary>
internal static class SecondWords
{
    public static string Title => Say($"Second check");
    public static string Here => Say($"The second person is here");

    public static string Yourself => Say($"Enter what you read yourself. The first reading is shown afterwards.");

    public static string Waits =>
        Say($"A second person has still to read it, without seeing what you read. Until then the machine stays.");

    public static string Read(ReadingTaken reading) => Say($"{reading.Entry.By} read {Shown(reading)}");

    public static string Said(Agreement agreement) => Known(agreement.Words.Begun().Ended());

    public static string Readback(SecondCheck check) =>
        $"{Read(check.First!)}. {Read(check.Second!)}. {Said(check.Agreement!)}";

    private static Sentence Shown(ReadingTaken reading) =>
        reading.Opinion.Shown.Length > 0
            ? reading.Opinion.Shown
            : Sentence.List(reading.Raw.Count > 0 ? reading.Raw.Select(Sentence.Number) : [(Sentence)$"done"]);
}
