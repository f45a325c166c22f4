namespace Witnessmark.Client.Bench;

/// <summary>A half-typed reading as it survives a reload.</summary>
internal sealed record DraftText(IReadOnlyList<string> Texts, int At, string? With);
