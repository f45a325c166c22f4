using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Fasteners;

namespace Witnessmark.Bench.Figures;

/// <summary>The bolt that a torque is for: <c>M18x1.5 8.8</c>.</summary>
/// <param name="Thread">Size and pitch as written.</param>
/// <param name="Class">Its property class.</param>
public sealed record FigureBolt(string Thread, PropertyClass Class)
{
    private const string Right = "thread and property class, e.g. \"M8 8.8\" or \"M18x1.5 10.9\"";

    /// <inheritdoc/>
    public override string ToString() => $"{Thread} {Class.Name}";

    /// <summary>Reads the key <c>bolt</c>; null when it is missing or cannot be taken, which is noted.</summary>
    internal static FigureBolt? Read(TomlTable table)
    {
        if (table.TextOrNothing("bolt") is not { Length: > 0 } text)
            return null;
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (
            parts.Length == 2
            && MetricThread.Read(parts[0]) is not null
            && PropertyClass.All.FirstOrDefault(c => c.Name == parts[1]) is { } propertyClass
        )
            return new(parts[0], propertyClass);
        table.Wrong("bolt", $"\"{text}\"", $"{Right}; threads {MetricThread.Allowed}");
        return null;
    }
}
