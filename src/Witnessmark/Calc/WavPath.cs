using System.Text.Json;
using System.Text.Json.Nodes;

namespace Witnessmark.Calc;

/// <summary>The handbook reaches no files: a path that ends in .wav is replaced by the bytes of the file, as base64.</summary>
internal static class WavPath
{
    private const long MostBytes = 1 << 25;

    /// <summary>The request with the file in the place of its path; every other request as it is.</summary>
    /// <exception cref="IOException">The file is too long or cannot be read.</exception>
    public static JsonElement Loaded(string calculation, JsonElement given)
    {
        if (
            calculation != "tone"
            || given.ValueKind != JsonValueKind.Object
            || !given.TryGetProperty("samples", out var samples)
            || samples.ValueKind != JsonValueKind.String
            || samples.GetRawText() is not { } raw
            || !raw.EndsWith(".wav\"", StringComparison.OrdinalIgnoreCase)
        )
            return given;
        var path = samples.GetString()!;
        if (!File.Exists(path))
            throw new FileNotFoundException($"samples: {path}: there is no such file.");
        if (new FileInfo(path).Length > MostBytes)
            throw new IOException($"samples: {path}: more than {MostBytes} bytes.");
        var loaded = JsonObject.Create(given.Clone())!;
        loaded["samples"] = Convert.ToBase64String(File.ReadAllBytes(path));
        return JsonSerializer.SerializeToElement(loaded);
    }

    /// <summary>The reply of a calculation to a request that may name a file.</summary>
    public static Handbook.Catalogue.Reply Ask(Handbook.Catalogue.Calculation calculation, JsonElement given)
    {
        try
        {
            return calculation.Ask(Loaded(calculation.Name, given));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Handbook.Catalogue.Reply.Wrong(failure.Message);
        }
        catch (Exception failure) when (failure is InvalidOperationException or ArgumentException)
        {
            // Broken text or a key given twice: the calculation itself says which.
            return calculation.Ask(given);
        }
    }
}
