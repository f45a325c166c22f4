using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Machines;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Machines;

/// <summary>A machine in a list, whoever knows it: this device or the register.</summary>
internal sealed record MachineLine(string Id, string? Number, string? Plate, string Title, string? Owner)
{
    /// <summary>What tells it from others.</summary>
    public string Facts => string.Join(" · ", ((string?[])[Number, Owner]).Where(f => !string.IsNullOrEmpty(f)));

    public static MachineLine Of(Machine machine) =>
        new(
            machine.Id,
            machine.Vin.Length > 0 ? machine.Vin : machine.Frame,
            machine.Plate,
            $"{machine.Make} {machine.Name} {machine.Year}".Trim(),
            null
        );

    public static MachineLine Of(FoundMachine machine) =>
        new(
            machine.Id,
            machine.Vin ?? machine.Frame,
            machine.Plate,
            $"{machine.Make} {machine.Name} {machine.Year}".Trim(),
            machine.Owner
        );

    /// <summary>Those of the register, and those of this device that are none of them.</summary>
    public static IEnumerable<MachineLine> Merged(IReadOnlyList<MachineLine> known, FoundReply? found)
    {
        var register = found?.Machines.Select(Of).ToArray() ?? [];
        var told = register.SelectMany(m => (string?[])[m.Id, m.Number]).OfType<string>().ToHashSet();
        return register.Concat(
            known.Where(m => !told.Contains(m.Id) && !(m.Number is { } number && told.Contains(number)))
        );
    }

    /// <summary>Every word that was typed stands somewhere in what is known of it; spaces and dashes of a number are no matter.</summary>
    public bool Has(string typed)
    {
        string[] keys = [.. ((string?[])[Id, Number, Plate, Title]).Select(t => NameKey.Of(t ?? ""))];
        var whole = NameKey.Of(typed);
        return keys.Any(k => k.Contains(whole, StringComparison.Ordinal))
            || typed
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(NameKey.Of)
                .All(w => keys.Any(k => k.Contains(w, StringComparison.Ordinal)));
    }
}
