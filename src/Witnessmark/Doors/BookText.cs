using System.Globalization;
using Witnessmark.Calc;

namespace Witnessmark.Doors;

/// <summary>The book of the door on the command line.</summary>
internal static class BookText
{
    private const int Newest = 50;

    /// <summary>Writes it; the exit code.</summary>
    public static int Write(Door door, TextWriter output)
    {
        if (!door.IsClosed)
        {
            output.WriteLine("The door is open: the shop speaks to this computer only, and to everybody at it.");
            return ExitCode.Ok;
        }
        var book = door.Book(Newest);
        output.WriteLine("People");
        foreach (var person in book.People)
            output.WriteLine($"  {person.Name}, {person.Role}: {Standing(person)}");
        output.WriteLine("Devices");
        foreach (var device in book.Devices)
            output.WriteLine(
                $"  {device.Id}  {device.Label}, {(device.Shared ? "shared" : "somebody's own")}, {Standing(device)}"
            );
        output.WriteLine("What happened, the newest first");
        foreach (var happened in book.Events)
            output.WriteLine($"  {At(happened.At)}  {happened.Says}");
        if (book.Fault is not { } fault)
            return ExitCode.Ok;
        output.WriteLine(fault);
        return ExitCode.Differs;
    }

    private static string Standing(PersonInBook person) =>
        person.CodeUntil is { } until ? $"has a start code until {At(until)}"
        : person.Shut ? "shut after wrong secrets; needs a start code"
        : person.Started ? "has a secret"
        : "needs a start code";

    private static string Standing(DeviceInBook device) =>
        device.Revoked is { } at ? $"shut out {At(at)}" : $"let in {At(device.At)} by {device.LetInBy}";

    private static string At(DateTimeOffset at) =>
        at.ToUniversalTime().ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture);
}
