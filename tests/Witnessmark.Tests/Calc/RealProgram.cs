using System.Diagnostics;
using System.Text;

namespace Witnessmark.Tests.Calc;

/// <summary>The program as built, started as a process of its own.</summary>
internal static class RealProgram
{
    public sealed record Ended(int ExitCode, string Output, string Errors);

    public static Ended Run(string input, params string[] arguments)
    {
        using var process = Start(arguments);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return new(process.ExitCode, output.Result, errors.Result);
    }

    public static Process Start(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(ProgramFile.Path);
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }
}
