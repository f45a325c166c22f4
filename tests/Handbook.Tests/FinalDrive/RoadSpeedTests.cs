using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class RoadSpeedTests
{
    // Own arithmetic: a wheel of 630 mm, 1.97920 m round, at 6000 1/min and 3.6 overall makes 1666.67 turns in a minute
    [Fact]
    public void Speed_is_the_way_of_the_wheel_in_an_hour()
    {
        var told = RoadSpeed.From(new Frequency(100), 1.2, 1, 15, 45, new Length(Math.PI * 630));
        Assert.Equal(3, told.FinalRatio);
        Assert.Equal(6000 / 3.6 * 60 * 1.97920 / 1000, told.Speed.KilometresPerHour, 1e-3);
    }

    [Fact]
    public void A_standing_engine_stands() =>
        Assert.Equal(0, RoadSpeed.From(new Frequency(0), 2, 1, 15, 45, new Length(2000)).Speed.KilometresPerHour);
}
