using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary><c>calc NAME FILE</c>: one request.</summary>
internal static class Ask
{
    public static int Run(string name, string file)
    {
        if (Calculations.Named(name) is not { } calculation)
            return Wrong(Unknown(name));
        try
        {
            using var given = JsonText.Read(file);
            return Print(calculation.Ask(given.RootElement));
        }
        catch (Exception failure) when (JsonText.WhyUnreadable(failure, file) is not null)
        {
            return Wrong(JsonText.WhyUnreadable(failure, file)!);
        }
    }

    /// <summary>What to say to a name that is not in the handbook.</summary>
    public static string Unknown(string name) => $"There is no calculation \"{name}\"; calc list names them all.";

    private static int Print(Reply reply)
    {
        if (reply.Malformed is { } malformed)
            return Wrong(malformed);
        JsonText.Print(reply.ToJson());
        return reply.Refusal is null ? ExitCode.Ok : ExitCode.Refused;
    }

    private static int Wrong(string message)
    {
        JsonText.Print(new JsonObject { ["wrong"] = message });
        Console.Error.WriteLine(message);
        return ExitCode.Malformed;
    }
}
