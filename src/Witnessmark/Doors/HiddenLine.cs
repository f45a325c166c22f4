using System.Text;

namespace Witnessmark.Doors;

/// <summary>A line that is typed and not shown, for whoever looks over a shoulder.</summary>
public static class HiddenLine
{
    /// <summary>From the keyboard unseen, or from wherever the input comes.</summary>
    public static string? Read() =>
        Console.IsInputRedirected ? Console.In.ReadLine() : Typed(() => Console.ReadKey(intercept: true));

    /// <summary>Of the keys up to Enter.</summary>
    public static string Typed(Func<ConsoleKeyInfo> key)
    {
        var line = new StringBuilder();
        while (key() is var pressed && pressed.Key != ConsoleKey.Enter)
            if (pressed.Key == ConsoleKey.Backspace)
                line.Length = Math.Max(0, line.Length - 1);
            else if (!char.IsControl(pressed.KeyChar))
                line.Append(pressed.KeyChar);
        return line.ToString();
    }
}
