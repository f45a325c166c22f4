using FsCheck.Xunit;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Tests.Book;

public class DamageTests
{
    // whatever a slip of the hand or half a copy leaves behind: a workbench or mistakes, never an exception and never both
    [Property(MaxTest = 150)]
    public bool Damage_anywhere_gives_a_workbench_or_mistakes(int file, int at, byte length, string? put)
    {
        var files = DemoFiles.All.ToArray();
        var which = (int)((uint)file % files.Length);
        var text = files[which].Text;
        var from = (int)((uint)at % text.Length);
        var to = Math.Min(text.Length, from + length);
        files[which] = files[which] with { Text = text[..from] + put + text[to..] };
        var (bench, mistakes) = WorkbenchFiles.Read(files);
        return bench is null == mistakes.Count > 0
            && mistakes.All(m => m is { Line: > 0, Column: > 0, Found.Length: > 0, Right.Length: > 0 });
    }

    // a file copied half way ends anywhere
    [Property(MaxTest = 150)]
    public bool A_file_that_ends_early_gives_a_workbench_or_mistakes(int file, int at)
    {
        var files = DemoFiles.All.ToArray();
        var which = (int)((uint)file % files.Length);
        files[which] = files[which] with { Text = files[which].Text[..(int)((uint)at % files[which].Text.Length)] };
        var (bench, mistakes) = WorkbenchFiles.Read(files);
        return bench is null == mistakes.Count > 0;
    }
}
