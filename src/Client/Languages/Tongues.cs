using Witnessmark.Client.Device;

namespace Witnessmark.Client.Languages;

/// <summary>Fetches a language when somebody chooses it; from then on it is kept with the program and needs no network.</summary>
internal sealed class Tongues(ShopLine line)
{
    private readonly Dictionary<string, Tongue> had = new(StringComparer.Ordinal) { ["en"] = Tongue.English };

    /// <summary>The language; null where its texts are not on this device and cannot be fetched now.</summary>
    public async Task<Tongue?> Of(string code)
    {
        if (had.TryGetValue(code, out var tongue))
            return tongue;
        try
        {
            return await line.Beside($"languages/{code}.po") is { } texts
                ? had[code] = Tongue.German(new(PoFile.Read(texts)))
                : null;
        }
        catch (FormatException)
        {
            return null; // not a catalogue: another server answers at this address
        }
    }
}
