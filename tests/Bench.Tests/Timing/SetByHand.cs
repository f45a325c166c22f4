namespace Witnessmark.Bench.Tests.Timing;

/// <summary>A clock and a counter that go as a test says.</summary>
internal sealed class SetByHand : TimeProvider
{
    private DateTimeOffset clock = new(2026, 11, 26, 8, 0, 0, TimeSpan.Zero);
    private TimeSpan counter = TimeSpan.FromHours(3);

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override DateTimeOffset GetUtcNow() => clock;

    public override long GetTimestamp() => counter.Ticks;

    public void Passes(double seconds) =>
        (clock, counter) = (clock.AddSeconds(seconds), counter + TimeSpan.FromSeconds(seconds));

    /// <summary>The clock alone: set by somebody, or the device slept.</summary>
    public void ClockMoves(double seconds) => clock = clock.AddSeconds(seconds);
}
