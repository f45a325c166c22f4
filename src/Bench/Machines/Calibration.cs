namespace Witnessmark.Bench.Machines;

/// <summary>How an instrument's calibration stands on a day.</summary>
public enum CalibrationState
{
    /// <summary>It holds, or the shop checks it never.</summary>
    InDate,

    /// <summary>Its day to be checked has passed.</summary>
    Overdue,

    /// <summary>No date is on record.</summary>
    NoDate,
}

/// <summary>
/// Whether an instrument may prove that somebody is safe. A reading with one that is overdue is kept, and proves no safety point; the
/// day on which it is checked next speaks for what was read before, because the check finds it right or finds the readings wrong.
/// </summary>
public static class Calibration
{
    /// <summary>How it stands on a day; on the last day itself it holds.</summary>
    public static CalibrationState On(ShopInstrument instrument, DateOnly day) =>
        instrument.NeverChecked || instrument.Kind == "level" ? CalibrationState.InDate
        : instrument is { Checked: null, Due: null } ? CalibrationState.NoDate
        : day > instrument.Due ? CalibrationState.Overdue
        : CalibrationState.InDate;

    /// <summary>Whether it may prove a safety point on a day.</summary>
    public static bool Proves(ShopInstrument instrument, DateOnly day) =>
        On(instrument, day) switch
        {
            CalibrationState.Overdue => false,
            CalibrationState.NoDate => !instrument.DateNeeded,
            _ => true,
        };

    /// <summary>What is to be said of it in a sentence; null when there is nothing.</summary>
    public static Sentence? Doubt(ShopInstrument instrument, DateOnly day) =>
        On(instrument, day) switch
        {
            CalibrationState.Overdue =>
                $"{instrument.Name} had to be checked by {Sentence.Day(DayForm.Figures, instrument.Due!.Value)}.",
            CalibrationState.NoDate => $"{instrument.Name}: no date on record of its last check.",
            _ => null,
        };
}
