using System.Globalization;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

/// <summary>
/// The book of the door once more, line by line in the server's output as it is written: where the system keeps that out of the server's reach, nobody who breaks in to the
/// server takes the end of the book away unseen.
/// </summary>
internal static class DoorOutput
{
    /// <summary>Under which it stands there.</summary>
    public const string Category = "Witnessmark.Door";

    /// <summary>Begins it.</summary>
    public static void Write(WebApplication app)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger(Category);
        app.Services.GetRequiredService<Door>().Told = happened => log.LogInformation("{Line}", Line(happened));
    }

    /// <summary>An event in one line.</summary>
    public static string Line(DoorEvent happened) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"event {happened.Number} at {happened.At.UtcDateTime:yyyy-MM-dd'T'HH:mm:ss.fff'Z'}, {happened.What}: {happened.Says} [{happened.Chain}]"
        );
}
