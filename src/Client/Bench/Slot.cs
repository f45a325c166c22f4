namespace Witnessmark.Client.Bench;

/// <summary>One box of a reading.</summary>
/// <param name="Label">What is read here: <c>Lowest mark</c>.</param>
/// <param name="Place">As it is recorded, or null where there is one place only.</param>
public sealed record Slot(string Label, string? Place)
{
    /// <summary>As typed.</summary>
    public string Text { get; set; } = "";
}
