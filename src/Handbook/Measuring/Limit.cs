namespace Witnessmark.Handbook.Measuring;

/// <summary>What a figure permits: at least, at most, or between. Both in the same unit as the reading.</summary>
/// <param name="Min">Smallest permitted value, or null.</param>
/// <param name="Max">Largest permitted value, or null.</param>
public readonly record struct Limit(double? Min, double? Max);
