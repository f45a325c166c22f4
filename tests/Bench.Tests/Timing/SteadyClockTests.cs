using Witnessmark.Bench.Timing;

namespace Witnessmark.Bench.Tests.Timing;

public class SteadyClockTests
{
    private readonly SetByHand device = new();

    [Fact]
    public void It_goes_with_the_clock_while_nobody_sets_it()
    {
        var steady = new SteadyClock(device);
        device.Passes(90);
        Assert.Equal(device.GetUtcNow(), steady.Now);
        device.ClockMoves(4.9);
        Assert.Equal(ClockJump.None, steady.Look(wasDark: false, out var moved, out _));
        Assert.Equal(TimeSpan.Zero, moved);
    }

    [Theory]
    [InlineData(-3600, false, ClockJump.Back)]
    [InlineData(-3600, true, ClockJump.Back)]
    [InlineData(3600, false, ClockJump.Forward)]
    [InlineData(-5, false, ClockJump.Back)]
    [InlineData(5, false, ClockJump.Forward)]
    public void A_clock_that_was_set_moves_no_timer(double by, bool wasDark, ClockJump jump)
    {
        var steady = new SteadyClock(device);
        var timer = new BenchTimer("t", "1", "p", "t", steady.Now, TimeSpan.FromMinutes(10));
        device.Passes(60);
        device.ClockMoves(by);
        Assert.Equal(TimeSpan.FromMinutes(9), timer.Left(steady.Now));
        Assert.Equal(jump, steady.Look(wasDark, out var moved, out var found));
        Assert.Equal(TimeSpan.FromSeconds(by), found);
        timer = timer with { Started = timer.Started + moved };
        Assert.Equal(TimeSpan.FromMinutes(9), timer.Left(steady.Now));
        // and after a reload, which begins with the clock as it stands
        Assert.Equal(TimeSpan.FromMinutes(9), timer.Left(new SteadyClock(device).Now));
        Assert.Equal(ClockJump.None, steady.Look(wasDark, out _, out _));
    }

    [Fact]
    public void While_a_device_sleeps_time_passes()
    {
        var steady = new SteadyClock(device);
        var timer = new BenchTimer("t", "1", "p", "t", steady.Now, TimeSpan.FromMinutes(10));
        device.ClockMoves(400);
        Assert.Equal(ClockJump.Slept, steady.Look(wasDark: true, out var moved, out var found));
        Assert.Equal((TimeSpan.Zero, TimeSpan.FromSeconds(400)), (moved, found));
        Assert.Equal(TimeSpan.FromSeconds(200), timer.Left(steady.Now));
    }

    [Fact]
    public void A_timer_from_later_than_now_is_known_as_such()
    {
        var timer = new BenchTimer("t", "1", "p", "t", device.GetUtcNow(), TimeSpan.FromMinutes(10));
        Assert.False(timer.IsAhead(device.GetUtcNow()));
        device.ClockMoves(-1);
        Assert.True(timer.IsAhead(device.GetUtcNow()));
    }
}
