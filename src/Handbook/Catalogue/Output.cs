namespace Witnessmark.Handbook.Catalogue;

/// <summary>One key that a calculation gives, as described to people.</summary>
/// <param name="Name">The key in JSON.</param>
/// <param name="Kind">Its unit, or what it is: <c>mm</c>, <c>text</c>, <c>list</c>.</param>
/// <param name="Meaning">What it is, in a few words.</param>
public sealed record Output(string Name, string Kind, string Meaning);
