namespace Witnessmark.Browser.Tests;

/// <summary>A screen and how a hand gets to it.</summary>
/// <param name="Name">What it is asked for by.</param>
/// <param name="Open">The way to it.</param>
/// <param name="GoesOn">Whether the way begins where the screen before it ended; else it begins anywhere.</param>
public sealed record Screen(string Name, Func<BenchHand, Task> Open, bool GoesOn = false);
