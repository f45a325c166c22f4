using System.Text.Json;
using System.Text.Json.Serialization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Settings;

/// <summary>How one person wants one device. What nobody chose is nought of its kind, so that what an older program kept still reads.</summary>
internal sealed record PersonSettings
{
    /// <summary>The hand that holds the tool; the other one types.</summary>
    public ToolHand Hand { get; init; }

    public TextSize Text { get; init; }

    public Contrast Contrast { get; init; }

    public ColourScheme Scheme { get; init; }

    /// <summary>Code of the language, or null: English.</summary>
    public string? Language { get; init; }

    /// <summary>The units that quantities are read in; what is typed keeps the unit of its instrument.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Whether a reading is said aloud when it is saved.</summary>
    public bool ReadsBack { get; init; }

    /// <summary>Whether the screen may go dark at a point.</summary>
    public bool LetsSleep { get; init; }

    /// <summary>Whether nobody is to lead through the first point of the demo any more.</summary>
    public bool GoesAlone { get; init; }

    /// <summary>As it is kept in the device's store.</summary>
    public string Write() => JsonSerializer.Serialize(this, SettingsJson.Default.PersonSettings);

    /// <summary>As nobody chose anything, where nothing readable is kept.</summary>
    public static PersonSettings Read(string? text)
    {
        try
        {
            return text is null
                ? new()
                : JsonSerializer.Deserialize(text, SettingsJson.Default.PersonSettings) ?? new();
        }
        catch (JsonException)
        {
            return new(); // written by a program that knows more choices
        }
    }
}

/// <summary>The hand that holds the tool.</summary>
internal enum ToolHand
{
    Left,
    Right,
}

/// <summary>Size of the text: as the browser has it, a quarter more, half more.</summary>
internal enum TextSize
{
    Normal,
    Large,
    Largest,
}

/// <summary>Contrast: as the system asks for, or the strongest there is.</summary>
internal enum Contrast
{
    System,
    Stronger,
}

/// <summary>Light or dark, or as the system has it.</summary>
internal enum ColourScheme
{
    System,
    Light,
    Dark,
}

[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true
)]
[JsonSerializable(typeof(PersonSettings))]
internal sealed partial class SettingsJson : JsonSerializerContext;
