using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook;
using Witnessmark.Handbook.Due;
using Witnessmark.Paper.Handover;

namespace Witnessmark.Paper.Labels;

/// <summary>What a label is for.</summary>
public enum LabelKind
{
    /// <summary>Sticks on the machine: when the next service is due.</summary>
    Service,

    /// <summary>Hangs on the key: whose machine, which job.</summary>
    Key,
}

/// <summary>How loud a line of a label is.</summary>
internal enum LabelFace
{
    Title,
    Strong,
    Body,
    Aside,
}

/// <summary>The lines of a label, from the top.</summary>
internal static class LabelText
{
    /// <summary>The lines, or why there are none.</summary>
    public static Answer<List<(Sentence Text, LabelFace Face)>> Of(
        LabelKind kind,
        JobState state,
        Workbench bench,
        Outlook expected
    ) =>
        state.Arrival is not { } arrival
            ? Refused("not-opened", $"Job {state.Job} has not been opened: it has no machine.")
        : kind is LabelKind.Key ? Key(state, arrival, bench)
        : expected.Services.Count == 0
            ? Refused(
                "no-schedule",
                $"The figure sheet \"{arrival.Sheet.Name}\" has no schedule, so nothing says when the next service is due. Give it one from the maker's manual: [[schedule]] with point and every."
            )
        : Service(state, bench, expected);

    private static List<(Sentence Text, LabelFace Face)> Key(JobState state, Arrival arrival, Workbench bench)
    {
        var machine = arrival.Machine;
        List<(Sentence Text, LabelFace Face)> lines = [(Sentence.Of(machine.Name), LabelFace.Title)];
        if (machine.Plate is { Length: > 0 } plate)
            lines.Add((Sentence.Of(plate), LabelFace.Strong));
        if (machine.Vin.Length > 0)
            lines.Add(($"VIN ends {machine.Vin[^Math.Min(4, machine.Vin.Length)..]}", LabelFace.Strong));
        else if (machine.Frame is { Length: > 0 } frame)
            lines.Add(($"Frame {frame}", LabelFace.Strong));
        lines.Add(($"Job {state.Job}, {arrival.Purpose}", LabelFace.Body));
        if (arrival.Promised is { Length: > 0 } promised)
            lines.Add(($"Promised: {promised}", LabelFace.Body));
        lines.Add((Sentence.Of(bench.Workshop.Name), LabelFace.Aside));
        return lines;
    }

    private static List<(Sentence Text, LabelFace Face)> Service(JobState state, Workbench bench, Outlook expected)
    {
        List<(Sentence Text, LabelFace Face)> lines = [($"Next service", LabelFace.Title)];
        var now = expected.Services.Where(IsNow).ToList();
        if (now.Count > 0)
            lines.Add(($"Now: {Titles(now)}", LabelFace.Strong));
        var ahead = expected.Services.Where(s => !IsNow(s)).ToList();
        if (ahead.Min(s => s.AtKilometres) is { } km)
        {
            lines.Add(($"at {Distances.Shown(km, expected.Odometer)}", LabelFace.Strong));
            lines.Add((Titles(ahead.Where(s => s.AtKilometres == km)), LabelFace.Body));
        }
        if (ahead.Min(s => s.ByDay) is { } day)
        {
            Sentence by = ahead.Any(s => s.AtKilometres is not null)
                ? (Sentence)$"or by {SheetHead.Day(day)}"
                : (Sentence)$"by {SheetHead.Day(day)}";
            lines.Add((by, LabelFace.Strong));
            lines.Add((Titles(ahead.Where(s => s.ByDay == day)), LabelFace.Body));
        }
        lines.Add(($"{bench.Workshop.Name}, job {state.Job}", LabelFace.Aside));
        return lines;
    }

    private static bool IsNow(ServiceAhead service) =>
        service.State is DueState.Overdue or DueState.Due || service is { AtKilometres: null, ByDay: null };

    private static Sentence Titles(IEnumerable<ServiceAhead> services) =>
        Sentence.List(services.Select(s => s.Title), "; ");

    private static Answer<List<(Sentence Text, LabelFace Face)>> Refused(string key, Sentence because) =>
        Answer<List<(Sentence Text, LabelFace Face)>>.Refuse(key, because);
}
