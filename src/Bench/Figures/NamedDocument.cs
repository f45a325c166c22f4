namespace Witnessmark.Bench.Figures;

/// <summary>A maker's document with the short name that origins call it by: <c>manual</c> in <c>maker: manual p. 93</c>.</summary>
/// <param name="Name">One word.</param>
/// <param name="Title">Of the document.</param>
/// <param name="Edition">Of the document.</param>
public sealed record NamedDocument(string Name, string Title, string Edition);
