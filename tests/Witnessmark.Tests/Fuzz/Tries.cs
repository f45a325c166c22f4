using System.Globalization;

namespace Witnessmark.Tests.Fuzz;

/// <summary>How many spoilt things are tried: few with the tests, as many as <c>WITNESSMARK_FUZZ</c> says by command.</summary>
internal static class Tries
{
    private const string Longer = "WITNESSMARK_FUZZ";

    public static int Of(int usual) =>
        int.TryParse(
            Environment.GetEnvironmentVariable(Longer),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var asked
        )
            ? asked
            : usual;

    /// <summary>Says what was tried and how it ended, for whoever ran it by command.</summary>
    public static void Tell(string what, int seed, IReadOnlyDictionary<string, int> ends) =>
        TestContext.Current.SendDiagnosticMessage(
            $"{what}, seed {seed}: {ends.Values.Sum()} tried; {string.Join(", ", ends.OrderBy(e => e.Key).Select(e => $"{e.Key}: {e.Value}"))}"
        );
}
