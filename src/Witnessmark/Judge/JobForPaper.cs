using Witnessmark.Bench.JobFiles;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;
using Witnessmark.Keys;
using Witnessmark.Paper.LogBook;
using Witnessmark.Photographs;

namespace Witnessmark.Judge;

/// <summary>A job file with everything that its papers need.</summary>
/// <param name="Steps">The job's state after each of its entries.</param>
/// <param name="Bench">The workbench that it was judged at.</param>
/// <param name="Header">The head of its file.</param>
/// <param name="Pictures">Its photographs, by hash.</param>
/// <param name="Earlier">The machine's visits before it.</param>
/// <param name="Seal">What is signed with; null: nothing is.</param>
internal sealed record JobForPaper(
    IReadOnlyList<JobState> Steps,
    Workbench Bench,
    JobHeader Header,
    IReadOnlyDictionary<string, byte[]> Pictures,
    IReadOnlyList<JobState> Earlier,
    ShopSeal? Seal
)
{
    /// <summary>The job at its end.</summary>
    public JobState State => Steps[^1];

    /// <summary>The job, or null when its mistakes, or what is wrong with the key, were said to the error output.</summary>
    public static JobForPaper? Read(FileInfo file, FileInfo? key)
    {
        ShopSeal? seal;
        try
        {
            seal = key is null ? null : ShopKey.Read(File.ReadAllText(key.FullName)).Seal;
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{key!.Name}: {wrong.Message}");
            return null;
        }
        var pictures = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var (steps, bench, header, mistakes) = JobOnDisk.Read(file, pictures);
        if (steps is null)
            return Wrong(mistakes);
        var (earlier, wrongEarlier) = JobOnDisk.Earlier(file, header!);
        return earlier is null ? Wrong(wrongEarlier) : new(steps, bench!, header!, pictures, earlier, seal);
    }

    /// <summary>A photograph as large as paper shows it; null where the job's files hold none of that hash.</summary>
    public byte[]? Small(string hash) => Pictures.TryGetValue(hash, out var file) ? SmallPicture.Of(file) : null;

    /// <summary>A refusal in the form of the calculations, and its exit code.</summary>
    public static int Refused(Handbook.Refusal refusal)
    {
        Console.Error.WriteLine($"refused  {refusal.Key}");
        Console.Error.WriteLine($"because  {refusal.Because}");
        return ExitCode.Refused;
    }

    private static JobForPaper? Wrong(IReadOnlyList<Mistake> mistakes)
    {
        foreach (var mistake in mistakes)
            Console.Error.WriteLine(mistake);
        Console.Error.WriteLine(
            mistakes.Count == 1 ? "1 mistake; nothing was judged." : $"{mistakes.Count} mistakes; nothing was judged."
        );
        return null;
    }
}
