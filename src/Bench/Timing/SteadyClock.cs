namespace Witnessmark.Bench.Timing;

/// <summary>How the device's clock was found against time that passed.</summary>
public enum ClockJump
{
    /// <summary>As it should.</summary>
    None,

    /// <summary>Set back.</summary>
    Back,

    /// <summary>Set forward while somebody looked: no time passed.</summary>
    Forward,

    /// <summary>Ahead after the screen was off: the device slept, or its clock was set meanwhile; nothing here can tell.</summary>
    Slept,
}

/// <summary>
/// The time of day that does not follow somebody who sets the clock: taken from the clock once, and counted on with a counter
/// that only goes forward. Browsers stop that counter while a device sleeps, so what the clock is ahead after the screen was off
/// counts as time that passed.
/// </summary>
public sealed class SteadyClock
{
    /// <summary>Less than this is how far two clocks run apart, not somebody who sets one.</summary>
    public static readonly TimeSpan Tolerance = TimeSpan.FromSeconds(5);

    private readonly TimeProvider clock;
    private DateTimeOffset from;
    private long counted;

    /// <param name="clock">The device's clock, and its counter.</param>
    public SteadyClock(TimeProvider clock)
    {
        this.clock = clock;
        (from, counted) = (clock.GetUtcNow(), clock.GetTimestamp());
    }

    /// <summary>Now, steadily.</summary>
    public DateTimeOffset Now => from + clock.GetElapsedTime(counted);

    /// <summary>
    /// Looks at the device's clock. After a jump it goes on from what the clock says, and whoever keeps moments moves those that
    /// <paramref name="moved"/> tells by it; zero when time really passed, or nothing was found.
    /// </summary>
    /// <param name="wasDark">Whether the screen was off, or the page not looked at, since the last look.</param>
    /// <param name="moved">By how much moments kept before are to be moved.</param>
    /// <param name="found">By how much the clock was ahead (positive) or behind.</param>
    public ClockJump Look(bool wasDark, out TimeSpan moved, out TimeSpan found)
    {
        found = clock.GetUtcNow() - Now;
        moved = TimeSpan.Zero;
        if (found.Duration() < Tolerance)
            return ClockJump.None;
        (from, counted) = (clock.GetUtcNow(), clock.GetTimestamp());
        if (found > TimeSpan.Zero && wasDark)
            return ClockJump.Slept;
        moved = found;
        return found > TimeSpan.Zero ? ClockJump.Forward : ClockJump.Back;
    }
}
