using System.Text.Json;
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
            return Print(WavPath.Ask(calculation, given.RootElement));
        }
        catch (Exception failure) when (JsonText.WhyUnreadable(failure, file) is not null)
        {
            return Wrong(JsonText.WhyUnreadable(failure, file)!);
        }
    }

    /// <summary><c>calc NAME --option value ...</c>: lines for people, or JSON with <c>--json</c>.</summary>
    public static int Run(string name, IReadOnlyList<string> options)
    {
        if (Calculations.Named(name) is not { } calculation)
            return Told(Unknown(name));
        try
        {
            var request = Options.Request(calculation.Takes, [.. options.Where(o => o != "--json")]);
            var reply = WavPath.Ask(calculation, JsonSerializer.SerializeToElement(request));
            if (options.Contains("--json"))
                return Print(reply);
            if (reply.Malformed is { } malformed)
                return Told(malformed);
            Console.Out.Write(ForPeople.Text((JsonObject)JsonNode.Parse(reply.ToJson().ToJsonString())!));
            return reply.Refusal is null ? ExitCode.Ok : ExitCode.Refused;
        }
        catch (MalformedOption malformed)
        {
            return Told(malformed.Message);
        }
    }

    /// <summary>Whether the arguments of the program ask a calculation with options.</summary>
    public static bool WithOptions(IReadOnlyList<string> arguments) =>
        arguments.Count > 2
        && arguments[0] == "calc"
        && arguments[2].StartsWith("--", StringComparison.Ordinal)
        && arguments[2] != "--help"
        && arguments[1] is not ("list" or "describe" or "check" or "stream");

    private static int Told(string message)
    {
        Console.Error.WriteLine(message);
        return ExitCode.Malformed;
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
