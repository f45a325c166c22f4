using System.Text.Encodings.Web;
using System.Text.Json;
using Witnessmark.Calc;

namespace Witnessmark.Doors;

/// <summary>The whole book of the door for programs: <c>{closed}</c> alone while it is open, else <c>{closed, people, devices, events: [{number, at, what, person?, device?, says, chain}], fault?}</c>, events in their order.</summary>
public static class BookJson
{
    private static readonly JsonSerializerOptions Readable = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        // for a terminal or a file: nothing of it is put into a page
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes it; the exit code.</summary>
    public static int Write(Door door, TextWriter output)
    {
        if (!door.IsClosed)
        {
            output.WriteLine(JsonSerializer.Serialize(new { Closed = false }, Readable));
            return ExitCode.Ok;
        }
        var book = door.Book(0);
        output.WriteLine(
            JsonSerializer.Serialize(
                new
                {
                    Closed = true,
                    book.People,
                    book.Devices,
                    Events = door.AllEvents(),
                    book.Fault,
                },
                Readable
            )
        );
        return book.Fault is null ? ExitCode.Ok : ExitCode.Differs;
    }
}
