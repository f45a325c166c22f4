namespace Witnessmark.Doctor;

/// <summary>One thing that was looked at.</summary>
/// <param name="Of">What it is, in a word or two.</param>
/// <param name="Good">Whether it may stay as it is.</param>
/// <param name="Says">What was found, and what to do where it is not good.</param>
public sealed record Finding(string Of, bool Good, string Says);
