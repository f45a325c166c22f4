using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary><c>calc list</c>: name, one line, source.</summary>
internal static class List
{
    public static int Run(TextWriter to)
    {
        var width = Calculations.All.Max(c => c.Name.Length);
        foreach (var chapter in Calculations.All.GroupBy(c => c.Group))
        {
            to.WriteLine(chapter.Key);
            foreach (var calculation in chapter)
                to.WriteLine($"  {calculation.Name.PadRight(width)}  {calculation.Line} [{calculation.Source}]");
        }
        return ExitCode.Ok;
    }
}
