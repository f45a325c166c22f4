using System.Diagnostics;
using System.Globalization;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary>How far an import is and how long it still takes, in one line of a terminal; silent where errors go to a file.</summary>
public sealed class ProgressLine : IDisposable
{
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(200);
    private readonly Stopwatch since = Stopwatch.StartNew();
    private readonly bool silent = Console.IsErrorRedirected;
    private TimeSpan next;
    private int width;

    public void Show(ImportProgress now)
    {
        if (silent || since.Elapsed < next)
            return;
        next = since.Elapsed + Between;
        Put(Text(now, since.Elapsed));
    }

    /// <summary>Clears the line.</summary>
    public void Dispose()
    {
        if (width > 0)
            Put("");
        width = 0;
    }

    /// <summary>Share, rows, and the time left at the speed so far.</summary>
    public static string Text(ImportProgress now, TimeSpan taken)
    {
        var share = now.OfBytes > 0 ? (double)now.Bytes / now.OfBytes : 0;
        var left = share > 0 ? taken * ((1 - share) / share) : TimeSpan.Zero;
        var time = share > 0 ? $", {left.TotalSeconds:0} s left" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{share:0 %}, {now.Rows:#,0} rows{time}");
    }

    private void Put(string text)
    {
        Console.Error.Write($"\r{text.PadRight(width)}{(text.Length == 0 ? "\r" : "")}");
        width = text.Length;
    }
}
