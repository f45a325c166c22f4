using Witnessmark.Serve;

namespace Witnessmark.Groups;

/// <summary>What keeps a server of a group from starting, before the store is asked.</summary>
public static class GroupStart
{
    /// <summary>A sentence, or null.</summary>
    public static string? Refusal(DataFolder data, Listening listening, bool demo) =>
        demo ? "--demo and --group do not go together: the invented workshop has a data folder of its own."
        : listening is { Https: not null, Certificate: null }
            ? "In a group the balancer has the certificate (--behind), or --certificate names a public one: each server would make an authority of its own."
        : !Directory.Exists(data.Path) ? $"There is no folder {data.Path} with shop.toml, book/ and sheets/."
        : OwnFiles.FirstIn(data.Path) is { } own
            ? $"{data.Path} has {own}, which a server by itself writes: copy it into the store (witnessmark migrate --to postgres), then name a folder with shop.toml, book/, own-book/ and sheets/ alone."
        : null;
}
