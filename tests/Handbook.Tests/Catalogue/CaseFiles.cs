using System.Text.Json;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>The check cases beside the tests.</summary>
internal static class CaseFiles
{
    public static IReadOnlyList<CheckCase> All { get; } =
    [
        .. Directory
            .GetFiles(Path.Combine(AppContext.BaseDirectory, "Cases"), "*.json")
            .Order(StringComparer.Ordinal)
            .SelectMany(f => CheckCases.In(Json(File.ReadAllText(f)))),
    ];

    public static JsonElement Json(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    public static Reply Ask(string calculation, string given) => Calculations.Named(calculation)!.Ask(Json(given));
}
