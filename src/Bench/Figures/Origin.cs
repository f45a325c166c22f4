namespace Witnessmark.Bench.Figures;

/// <summary>Where a figure comes from.</summary>
public enum OriginKind
{
    Maker,
    Law,
    Standard,
    Shop,
    CommonPractice,
}

/// <summary>The origin of a figure with its place: <c>maker: handbook p. 87</c>.</summary>
/// <param name="Kind">Who demands it.</param>
/// <param name="Place">Document and page, jurisdiction and clause, or the standard's number; empty for shop and common practice.</param>
public sealed record Origin(OriginKind Kind, string Place)
{
    /// <summary>A figure that is not the maker's, the law's or a standard's says so each time it is shown.</summary>
    public bool Binding => Kind is OriginKind.Maker or OriginKind.Law or OriginKind.Standard;

    /// <summary>The place whose law it is, as the origin names it; null for every other origin.</summary>
    public string? Jurisdiction => Kind == OriginKind.Law ? Place.Split(',')[0].Trim() : null;

    /// <summary>As it is written in a sheet: <c>maker: handbook p. 87</c>.</summary>
    public string Text =>
        Kind switch
        {
            OriginKind.Maker => $"maker: {Place}",
            OriginKind.Law => $"law: {Place}",
            OriginKind.Standard => $"standard: {Place}",
            OriginKind.Shop => "shop",
            _ => $"common practice",
        };

    /// <summary>Who allows or demands it, as the subject of a sentence: <c>the maker</c>.</summary>
    public Sentence Who =>
        Kind switch
        {
            OriginKind.Maker => $"the maker",
            OriginKind.Law => $"the law",
            OriginKind.Standard => $"the standard",
            OriginKind.Shop => $"the workshop (not the maker)",
            _ => $"common practice (not the maker)",
        };
}
