using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Witnessmark.Calc;

/// <summary>JSON in and out of the command line: UTF-8 whatever the terminal is set to, units readable (mm², not mm\u00B2).</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>One value to a line, for batches.</summary>
    public static JsonWriterOptions Line { get; } =
        new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    /// <summary>A whole file, or standard input for <c>-</c>.</summary>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    /// <exception cref="JsonException">It is not JSON.</exception>
    public static JsonDocument Read(string file)
    {
        using var source = file == "-" ? Console.OpenStandardInput() : File.OpenRead(file);
        return JsonDocument.Parse(source);
    }

    /// <summary>Why a file could not be read, in words for the one who named it; null for any other failure.</summary>
    public static string? WhyUnreadable(Exception failure, string file) =>
        failure switch
        {
            FileNotFoundException or DirectoryNotFoundException => $"{file}: there is no such file.",
            JsonException json =>
                $"{file}: not JSON, line {json.LineNumber + 1}, byte {json.BytePositionInLine + 1}: {FirstSentence(json)}.",
            IOException or UnauthorizedAccessException => $"{file}: cannot be read: {failure.Message}",
            _ => null,
        };

    /// <summary>Indented, to standard output.</summary>
    public static void Print(JsonObject json)
    {
        using var output = Console.OpenStandardOutput();
        using (var writer = new Utf8JsonWriter(output, Readable))
            json.WriteTo(writer);
        output.Write("\n"u8);
    }

    /// <summary>What the parser says, without its own copy of line and byte.</summary>
    public static string FirstSentence(JsonException failure) =>
        failure.Message.Split(" LineNumber:")[0].TrimEnd('.', ' ');
}
