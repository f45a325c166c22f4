namespace Witnessmark.Handbook.Languages;

/// <summary>The forms in which a day is written.</summary>
public enum DayForm
{
    /// <summary>In figures: 2026-11-24, in German 24.11.2026.</summary>
    Figures,

    /// <summary>In words: 24 November 2026, in German 24. November 2026.</summary>
    Words,

    /// <summary>Its month: November 2026.</summary>
    Month,

    /// <summary>Day of the week, day and month in short: Tue 24 Nov, in German Di 24. Nov.</summary>
    Week,
}
