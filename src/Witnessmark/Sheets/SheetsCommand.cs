using System.CommandLine;

namespace Witnessmark.Sheets;

/// <summary><c>witnessmark sheets</c>: figure sheets as files.</summary>
internal static class SheetsCommand
{
    /// <summary>The command with what can be done to sheets.</summary>
    public static Command Create() =>
        new("sheets", "Check figure sheets, take them into a shop, give them out.")
        {
            CheckSheets.Create(),
            ImportSheet.Create(),
            ExportSheet.Create(),
        };

    /// <summary>The data folder of the shop.</summary>
    internal static Option<string> Data() =>
        new("--data") { Description = "the shop's data folder", DefaultValueFactory = _ => "data" };
}
