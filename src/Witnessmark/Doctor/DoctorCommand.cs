using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Calc;
using Witnessmark.Groups;

namespace Witnessmark.Doctor;

/// <summary><c>witnessmark doctor</c>: is everything well with a data folder?</summary>
public static class DoctorCommand
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data")
        {
            Description = "data folder of the shop; it may be served meanwhile",
            DefaultValueFactory = _ => "data",
        };
        var group = GroupOption.Create();
        var json = new Option<bool>("--json") { Description = "one JSON object: good, findings" };
        var doctor = new Command(
            "doctor",
            "Look at disk, clock, files, ledger and photographs of a shop. Ends with 0 all is well, 1 something is not, 2 no such folder."
        )
        {
            data,
            group,
            json,
        };
        doctor.SetAction(parsed =>
            parsed.GetResult(group) is null
                ? Run(
                    parsed.GetRequiredValue(data),
                    parsed.GetValue(json),
                    TimeProvider.System.GetUtcNow(),
                    Console.Out,
                    Console.Error
                )
                : Run(() => group.Of(parsed)!, parsed.GetValue(json))
        );
        return doctor;
    }

    /// <summary>The exit code.</summary>
    public static int Run(string data, bool json, DateTimeOffset now, TextWriter output, TextWriter errors)
    {
        if (!Directory.Exists(data))
        {
            errors.WriteLine($"There is no data folder {data}.");
            return ExitCode.Malformed;
        }
        return Say(Examination.Of(data, now), json, output);
    }

    private static int Run(Func<GroupFile> group, bool json)
    {
        try
        {
            return Say(GroupExamination.Of(group(), TimeProvider.System.GetUtcNow()), json, Console.Out);
        }
        catch (FormatException wrong)
        {
            Console.Error.WriteLine(wrong.Message);
            return ExitCode.Malformed;
        }
    }

    private static int Say(IReadOnlyList<Finding> findings, bool json, TextWriter output)
    {
        if (json)
            output.WriteLine(Object(findings));
        else
            foreach (var finding in findings)
                output.WriteLine($"{(finding.Good ? "well " : "AMISS")}  {finding.Of, -13} {finding.Says}");
        return findings.All(f => f.Good) ? ExitCode.Ok : ExitCode.Differs;
    }

    private static string Object(IReadOnlyList<Finding> findings) =>
        new JsonObject
        {
            ["good"] = findings.All(f => f.Good),
            ["findings"] = new JsonArray([
                .. findings.Select(f =>
                    (JsonNode)
                        new JsonObject
                        {
                            ["of"] = f.Of,
                            ["good"] = f.Good,
                            ["says"] = f.Says,
                        }
                ),
            ]),
        }.ToJsonString(Readable);
}
