using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tyres;

/// <summary>The week a tyre was made in and its age, from the date code at the end of its identification number.</summary>
/// <remarks>
/// <para><b>Formula.</b> WWYY: week WW of the latest year that ends in YY and is not after the day asked about. WWY (before 2000): week WW of
/// the decade's year that ends in Y. Week 01 begins on the first Sunday of the year; week WW 7·(WW − 1) days later and must
/// begin in the same year. Age = day asked about − first day of the week.</para>
/// <para><b>Units.</b> Days of the calendar; age in days.</para>
/// <para><b>Source.</b> 49 CFR 574.5 (date code; four digits from July 2000, 64 FR 36807); that weeks run from Sunday to Saturday and week 01
/// is the first full one: the same regulation, from memory. Not the weeks of ISO 8601.</para>
/// <para><b>Valid when</b> the code is the last group of a full number: only one side of the tyre carries it.</para>
/// </remarks>
public static class TyreDate
{
    // Four digits are the law from July 2000 (64 FR 36807, 1999-07-08) and were moulded some years before; none in the eighties.
    private const int EarliestOfFourDigits = 1990;

    private const double SecondsPerDay = 86_400;

    /// <summary>Reads a code.</summary>
    /// <param name="code">Three or four digits.</param>
    /// <param name="on">The day asked about.</param>
    /// <param name="decade">First year of the decade, 1990, for three digits; not needed for four.</param>
    /// <returns>Refused as <c>decadeUnknown</c> or <c>notAWeek</c>.</returns>
    /// <exception cref="ArgumentException">The code is not three or four digits.</exception>
    public static Answer<TyreAge> Read(string code, DateOnly on, int? decade = null)
    {
        if (!IsCode(code))
            throw new ArgumentException("Three or four digits are needed.", nameof(code));
        var (week, tail) = (Digits(code[..2]), Digits(code[2..]));
        if (week is < 1 or > 53)
            return NotAWeek($"There is no week {week:00}: weeks are 01 to 53.");
        if (code.Length == 3 && decade is null)
            return Answer<TyreAge>.Refuse(
                "decadeUnknown",
                $"Three digits do not tell the decade: the tyre was made before 2000. Give the decade, or treat it as too old."
            );
        var year = code.Length == 4 ? LatestYear(tail, on.Year) : decade!.Value + tail;
        if (year < 1)
            return NotAWeek($"The calendar has no year before 1: check the day asked about.");
        return InYear(week, year, on, code.Length == 4 && year < EarliestOfFourDigits ? TooEarly(year) : null);
    }

    /// <summary>Whether a text has the form of a date code: three or four digits.</summary>
    public static bool IsCode(string code) => code.Length is 3 or 4 && code.All(char.IsAsciiDigit);

    private static Answer<TyreAge> InYear(int week, int year, DateOnly on, Sentence? note)
    {
        var first = FirstSunday(year);
        if (first.DayOfYear + 7 * (week - 1) > (new DateOnly(year, 12, 31).DayOfYear))
            return NotAWeek($"{year} had no week {week}: check the code.");
        var starts = first.AddDays(7 * (week - 1));
        if (starts > on)
            return NotAWeek($"Week {week:00} of {year} lies after the day asked about: check the code.");
        return new TyreAge(starts, new Duration((on.DayNumber - starts.DayNumber) * SecondsPerDay), note);
    }

    private static Sentence TooEarly(int year) =>
        $"No tyre of {year} carries four digits: the code is misread, or it lies after the day asked about.";

    private static DateOnly FirstSunday(int year)
    {
        var newYear = new DateOnly(year, 1, 1);
        return newYear.AddDays((7 - (int)newYear.DayOfWeek) % 7);
    }

    private static int LatestYear(int tail, int notAfter) => notAfter - (notAfter + 100 - tail) % 100;

    private static int Digits(string digits) => digits.Aggregate(0, (number, digit) => number * 10 + (digit - '0'));

    private static Answer<TyreAge> NotAWeek(Sentence because) => Answer<TyreAge>.Refuse("notAWeek", because);
}

/// <summary>When a tyre was made.</summary>
/// <param name="WeekStarts">The Sunday that begins the week.</param>
/// <param name="Age">From that Sunday to the day asked about.</param>
/// <param name="Note">Why the year cannot be, or null.</param>
public sealed record TyreAge(DateOnly WeekStarts, Duration Age, Sentence? Note);
