namespace Witnessmark.Handbook.Due;

/// <summary>A day so many calendar months after another, counted right beyond the last day that can be written.</summary>
/// <remarks>
/// The Gregorian calendar repeats after 400 years, which are 146 097 days: a day beyond the year 9999 is found 400 years earlier.
/// The day of the month is clipped to the month's length: one month after 31 January is 28 or 29 February.
/// </remarks>
internal static class CalendarDate
{
    private const int Cycle = 400; // years
    private const int DaysOfCycle = 146_097;

    /// <summary>The longest interval that is counted: it stays within one cycle of the calendar.</summary>
    public const int MostMonths = 1200;

    /// <summary>The day, or null when it cannot be written, and how many days it lies after another.</summary>
    public static (DateOnly? Day, int DaysLeft) After(DateOnly start, int months, DateOnly today)
    {
        if (start.Year + months / 12 + 1 <= DateOnly.MaxValue.Year)
        {
            var day = start.AddMonths(months);
            return (day, day.DayNumber - today.DayNumber);
        }
        var earlier = start.AddYears(-Cycle).AddMonths(months);
        var left = earlier.DayNumber + DaysOfCycle - today.DayNumber;
        return earlier.Year + Cycle > DateOnly.MaxValue.Year ? (null, left) : (earlier.AddYears(Cycle), left);
    }
}
