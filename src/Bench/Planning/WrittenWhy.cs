namespace Witnessmark.Bench.Planning;

/// <summary>Why a point is in a plan, for any reader: the entry holds it in English, as it was put together when the job was planned.</summary>
public static class WrittenWhy
{
    // stands for any argument
    private const string X = "";

    private static readonly Retold Reasons = new(
        [.. Campaigns, .. Conditions, .. Others],
        [.. Parts, .. DueByDate, .. DueByDistance]
    );

    /// <summary>The reason as the entry has it, to be said in a language.</summary>
    /// <param name="why">Its words.</param>
    public static Sentence Of(string? why) => Reasons.Of(why);

    /// <summary>The same, each reason by itself.</summary>
    /// <param name="why">Its words.</param>
    public static IReadOnlyList<Sentence> Each(string? why) => Reasons.Each(why);

    private static IEnumerable<Sentence> Campaigns =>
        [
            $"Campaign {X} ({X}) concerns this machine; its notice says not to ride until it is done.",
            $"Campaign {X} ({X}) concerns this machine.",
            $"Campaign {X} ({X}) may concern this machine: check with the maker; its notice says not to ride until it is done.",
            $"Campaign {X} ({X}) may concern this machine: check with the maker.",
        ];

    private static IEnumerable<Sentence> Conditions =>
        [
            $"Outside {X}{X}.",
            $"Unproven {X}{X}.",
            $"Close to its limit {X}{X}.",
            $"Left as it was {X}: {X}",
            $"Dropped {X}: {X}",
            $"Noted {X}: {X}",
        ];

    private static IEnumerable<Sentence> Others =>
        [
            $"{X} was read outside: correcting it asks for this again.",
            $"{X} is in the plan, and asks for this again.",
            $"By its wear ({X} readings) it reaches its limit within the next {X} with a probability of {X} %.",
            $"Due soon, every {X} by {X}: {X}",
            $"Overdue, every {X} by {X}: {X}",
            $"Due, every {X} by {X}: {X}",
        ];

    private static IEnumerable<Sentence> Parts =>
        [$"at the last visit, {X}", $": {X}", $"{X}.", $"{X} ({X})", $"{X} or {X}"];

    private static IEnumerable<Sentence> DueByDate =>
        [
            $"Done on {X}; it does not repeat.",
            $"By {X}: {X}, {X}.",
            $"By a day beyond the year 9999: {X}, {X}.",
            Sentence.Count(2, $"1 month after {X}", $"{X} months after {X}"),
            Sentence.Count(2, $"1 day over", $"{X} days over"),
            Sentence.Count(2, $"1 day left", $"{X} days left"),
        ];

    private static IEnumerable<Sentence> DueByDistance =>
        [
            $"By {X}: {X}, {X} at {X} a day.",
            $"{X} after {X} on {X}{X}",
            $"the first time{X}",
            $", counted on over the odometer replaced since",
            $"{X} over",
            $"{X} left",
        ];
}
