using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Machines;

/// <summary>Reads when an instrument has to be checked again: <c>due</c>, or <c>checked</c> and <c>check-every</c>.</summary>
internal static class CalibrationKeys
{
    private const string Never = "never";
    private const string Right = "calendar months such as \"12 months\", or \"never\"";

    public static ShopInstrument Read(TomlTable table, ShopInstrument instrument)
    {
        var due = table.DayOrNothing("due");
        var every = table.TextOrNothing("check-every");
        if (due is not null && every is not null)
            table.Wrong("check-every", "\"check-every\" beside \"due\"", "one of the two");
        if (due <= instrument.Checked)
            table.Wrong("due", $"{due:yyyy-MM-dd}, not after the day on which it was checked", "a later day");
        if (every is null or Never)
            return instrument with { Due = due, NeverChecked = every is not null };
        return instrument with { Due = due ?? After(table, instrument.Checked, every) };
    }

    /// <summary>Calendar months on, the day clipped to the month's length.</summary>
    private static DateOnly? After(TomlTable table, DateOnly? was, string every)
    {
        var months =
            Written.Read(every, out var written) is null
            && written is { Unit.Dimension: Dimension.CalendarMonths, Value: >= 1 and <= 600 }
            && written.Value % 1 == 0
                ? (int)written.Value
                : 0;
        if (months == 0)
            table.Wrong("check-every", $"\"{every}\"", Right);
        else if (was is null)
            table.Wrong("check-every", "an interval without a beginning", "checked = 2026-03-31 beside it");
        return months > 0 ? was?.AddMonths(months) : null;
    }
}
