namespace Witnessmark.Bench.Times;

/// <summary>How long one point took once.</summary>
/// <param name="Point">Its id.</param>
/// <param name="By">Who did it; null for waiting, which nobody does.</param>
/// <param name="Took">Hands-on time, or unattended time where <paramref name="By"/> is null.</param>
public sealed record ObservedTime(string Point, string? By, TimeSpan Took);
