using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary><c>calc check FILE...</c>: runs check cases and prints what differs.</summary>
internal static class Check
{
    public static int Run(IReadOnlyList<string> files, TextWriter to, TextWriter errors)
    {
        var (cases, differing, unreadable) = (0, 0, false);
        foreach (var file in files)
            try
            {
                using var json = JsonText.Read(file);
                foreach (var check in CheckCases.In(json.RootElement))
                {
                    cases++;
                    differing += Print(check, file, to) ? 1 : 0;
                }
            }
            catch (Exception failure) when (Why(failure, file) is not null)
            {
                errors.WriteLine(Why(failure, file));
                unreadable = true;
            }
        to.WriteLine($"{cases} cases, {differing} differ.");
        return unreadable ? ExitCode.Malformed
            : differing > 0 ? ExitCode.Differs
            : ExitCode.Ok;
    }

    private static bool Print(CheckCase check, string file, TextWriter to)
    {
        var differences = Differences(check);
        foreach (var difference in differences)
            to.WriteLine($"{file}: {check.Calculation.Name}, \"{check.Name}\": {difference}");
        return differences.Count > 0;
    }

    private static IReadOnlyList<string> Differences(CheckCase check)
    {
        try
        {
            return (check with { Given = WavPath.Loaded(check.Calculation.Name, check.Given) }).Differences();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [failure.Message]; // the recording is missing, not the file of cases
        }
    }

    private static string? Why(Exception failure, string file) =>
        failure is MalformedCases ? $"{file}: {failure.Message}" : JsonText.WhyUnreadable(failure, file);
}
