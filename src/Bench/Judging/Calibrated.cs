using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Judging;

/// <summary>
/// An instrument out of calibration proves no safety point: what would be inside is unproven, so that the job is held and the reading
/// is kept. What is outside stays outside. A day that nobody knows decides nothing.
/// </summary>
internal static class Calibrated
{
    public static Opinion Of(ReadingToJudge judged, Opinion opinion) =>
        judged is { Point.Safety: true, Instrument: { } instrument, On: { } day }
        && opinion.Verdict is VerdictWord.Inside or VerdictWord.Close
        && !Calibration.Proves(instrument, day)
            ? opinion with
            {
                Verdict = VerdictWord.Unproven,
                Headline = $"Unproven: {instrument.Name} is not in calibration",
                Grounds =
                    $"{Calibration.Doubt(instrument, day)} Read it again with one that is, or have it checked. {opinion.Grounds}",
            }
            : opinion;
}
