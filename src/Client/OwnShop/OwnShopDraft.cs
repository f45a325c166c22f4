using System.Text.Json;
using System.Text.Json.Serialization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.OwnShop;

namespace Witnessmark.Client.OwnShop;

/// <summary>A shop of one's own on its way through the screens: every field as typed, kept over a reload.</summary>
public sealed class OwnShopDraft
{
    /// <summary>Under what it is kept on the device.</summary>
    public const string Key = "own-shop";

    private const string Kind = "kind";

    /// <summary>Which screen is open: 0 shop, 1 tools, 2 machine, 3 all of it.</summary>
    public int Screen { get; set; }
    public string Name { get; set; } = "";

    /// <summary>One on each line.</summary>
    public string People { get; set; } = "";
    public string Lead { get; set; } = "";
    public string Jurisdiction { get; set; } = "";
    public string Paper { get; set; } = "A4";
    public string Language { get; set; } = "en";

    /// <summary>Whether readings are taken in inches, psi and lbf·ft.</summary>
    public bool Inches { get; set; }
    public List<ToolDraft> Tools { get; set; } = [];

    /// <summary>Whether the first machine waits for another day.</summary>
    public bool Later { get; set; }
    public string Machine { get; set; } = "";
    public string Make { get; set; } = "";
    public string Vin { get; set; } = "";
    public string Plate { get; set; } = "";
    public string Year { get; set; } = "";
    public string Drive { get; set; } = "";
    public string Cylinders { get; set; } = "";
    public Dictionary<string, string> Facts { get; set; } = [];

    [JsonIgnore]
    public IReadOnlyList<string> Names =>
        [
            .. People
                .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Distinct(StringComparer.Ordinal),
        ];

    /// <summary>What machines may be built like, by the names of figure sheets.</summary>
    public static IReadOnlyList<(string Name, IReadOnlyList<string> Words)> Traits =>
        [
            .. MachineFacts.Traits.Select(t => (t.Key, t.Value)),
            .. MachineFacts.Fitted.Select(name => (name, (IReadOnlyList<string>)["true", "false"])),
        ];

    /// <summary>
    /// What is asked of the machine: its kind, and what decides on a point that it can have after what was said so far. Nobody is asked for the
    /// winch of a motorcycle.
    /// </summary>
    public IReadOnlyList<(string Name, IReadOnlyList<string> Words)> Asked(BenchBook book) =>
        [.. Traits.Where(t => t.Name == Kind || book.Points.Values.Any(p => Decides(t.Name, p.OnlyFor)))];

    /// <summary>Forgets the answers to what is no longer asked.</summary>
    public void Tidy(BenchBook book)
    {
        var asked = Asked(book).Select(t => t.Name).ToHashSet();
        foreach (var name in Facts.Keys.Where(f => !asked.Contains(f)).ToList())
            Facts.Remove(name);
    }

    public string Write() => JsonSerializer.Serialize(this, OwnShopJson.Default.OwnShopDraft);

    /// <summary>As it was kept; new, with the usual tools of the demo to tick, where nothing readable was.</summary>
    public static OwnShopDraft Read(string? text, Workshop demo, DateOnly day, string language) =>
        Kept(text)
        ?? new()
        {
            Language = language,
            Tools = [.. demo.Instruments.Values.Where(i => Calibration.Proves(i, day)).Select(ToolDraft.Of)],
        };

    /// <summary>What is sent.</summary>
    public NewShop Shop() =>
        new(Name.Trim(), Names, Lead)
        {
            Jurisdiction = Jurisdiction.Trim() is { Length: > 0 } place ? place.ToUpperInvariant() : null,
            Paper = Paper,
            Language = Language,
            Instruments = [.. Tools.Where(t => t.Here).Select(t => t.Instrument(Inches))],
            Machine = Later ? null : First(),
        };

    private NewMachine First() =>
        new(Machine.Trim(), Drive, Whole(Cylinders) ?? 0, Facts)
        {
            Vin = Given(Vin)?.ToUpperInvariant(),
            Plate = Given(Plate),
            Make = Given(Make),
            Year = Given(Year) is null ? null : Whole(Year) ?? 0, // what is no year is said by the reader
        };

    private bool Decides(string trait, OnlyFor only) =>
        only.Conditions.ContainsKey(trait)
        && !only.Conditions.Any(c => c.Key != trait && Said(c.Key) is { } word && !c.Value.Contains(word));

    private string? Said(string trait) => trait == "drive" ? Given(Drive) : Given(Facts.GetValueOrDefault(trait, ""));

    private static string? Given(string text) => text.Trim() is { Length: > 0 } some ? some : null;

    private static int? Whole(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static OwnShopDraft? Kept(string? text)
    {
        try
        {
            return text is null ? null : JsonSerializer.Deserialize(text, OwnShopJson.Default.OwnShopDraft);
        }
        catch (JsonException)
        {
            return null; // of an older program: it was no fact yet
        }
    }
}

/// <summary>What is sent to the shop.</summary>
internal sealed record OwnShopRequest(string Ledger, NewShop Shop);

/// <summary>What it answers: where the demo lies now.</summary>
internal sealed record OwnShopReply(string PutAway);

[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase
)]
[JsonSerializable(typeof(OwnShopDraft))]
[JsonSerializable(typeof(OwnShopRequest))]
[JsonSerializable(typeof(OwnShopReply))]
internal sealed partial class OwnShopJson : JsonSerializerContext;
