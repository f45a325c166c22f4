namespace Witnessmark.Tests.Doors;

/// <summary>A clock that stands until it is moved.</summary>
internal sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 11, 29, 8, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;

    public void Pass(TimeSpan time) => Now += time;
}
