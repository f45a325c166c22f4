namespace Witnessmark.Handbook.Quantities;

/// <summary>A time at the bench or in days, kept in seconds.</summary>
/// <param name="Seconds">The value in seconds.</param>
public readonly record struct Duration(double Seconds) : IQuantity<Duration>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Duration;

    /// <inheritdoc/>
    public double Base => Seconds;

    /// <inheritdoc/>
    public static Duration OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Duration operator +(Duration a, Duration b) => new(a.Seconds + b.Seconds);

    /// <summary>The difference.</summary>
    public static Duration operator -(Duration a, Duration b) => new(a.Seconds - b.Seconds);

    /// <summary>The opposite.</summary>
    public static Duration operator -(Duration a) => new(-a.Seconds);

    /// <summary>A multiple.</summary>
    public static Duration operator *(Duration a, double factor) => new(a.Seconds * factor);

    /// <summary>A multiple.</summary>
    public static Duration operator *(double factor, Duration a) => new(a.Seconds * factor);

    /// <summary>A fraction.</summary>
    public static Duration operator /(Duration a, double divisor) => new(a.Seconds / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Duration a, Duration b) => a.Seconds / b.Seconds;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Duration a, Duration b) => a.Seconds < b.Seconds;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Duration a, Duration b) => a.Seconds > b.Seconds;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Duration a, Duration b) => a.Seconds <= b.Seconds;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Duration a, Duration b) => a.Seconds >= b.Seconds;
}
