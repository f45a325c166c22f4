using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Machines;

/// <summary><c>machines find</c> and <c>machines forget-owner</c>.</summary>
internal static class FindMachines
{
    /// <summary>0 looked for, 2 the question or the register cannot be read, 3 there is no register.</summary>
    public static int Run(string find, CommandPlace place, bool json) =>
        InRegister(
            place,
            register =>
            {
                if (FoundAnswer.Of(find, register) is not { } answer)
                    return Fail(FoundAnswer.TooShort(find), ExitCode.Malformed);
                if (json)
                    JsonText.Print((JsonObject)JsonSerializer.SerializeToNode(answer, JsonSerializerOptions.Web)!);
                else
                    Write(answer);
                return ExitCode.Ok;
            }
        );

    /// <summary>0 forgotten or nobody was on record, 2 there is no such machine, 3 there is no register.</summary>
    public static int ForgetOwner(string id, CommandPlace place) =>
        InRegister(
            place,
            register =>
            {
                if (register.ForgetOwner(id) is not { } known)
                    return Fail($"There is no machine \"{id}\" in the register.", ExitCode.Malformed);
                Console.WriteLine(
                    known
                        ? $"The owner of {id} is forgotten; the machine's record stays. A list that still names the owner brings the name back when it is imported."
                        : $"No owner of {id} is on record."
                );
                return ExitCode.Ok;
            }
        );

    private static int InRegister(CommandPlace place, Func<MachineRegister, int> work)
    {
        try
        {
            return place.In(shop =>
                shop.MachinesIfThere() is { } register
                    ? work(register)
                    : Fail(
                        $"No machines were ever imported into {place.Called}. See machines import.",
                        ExitCode.Refused
                    )
            );
        }
        catch (LedgerUnavailable broken)
        {
            return Fail(broken.Message, ExitCode.Malformed);
        }
    }

    private static void Write(FoundAnswer answer)
    {
        foreach (var m in answer.Machines)
        {
            var distance = m.LastDistance is { } last
                ? string.Create(CultureInfo.InvariantCulture, $"{last.Kilometres:0.#} km on {last.Day:yyyy-MM-dd}")
                : null;
            string?[] facts =
            [
                m.Id,
                $"{m.Make} {m.Name} {m.Year}".Trim(),
                m.Plate,
                m.Vin ?? (m.Frame is { } frame ? $"frame {frame}" : null),
                m.Owner,
                distance,
            ];
            Console.WriteLine(string.Join("  ", facts.OfType<string>()));
        }
        Console.WriteLine(
            answer.More ? $"More than these {answer.Machines.Count}: type more of it."
            : answer.Machines.Count == 1 ? "1 machine."
            : $"{answer.Machines.Count} machines."
        );
    }

    private static int Fail(string why, int code)
    {
        Console.Error.WriteLine(why);
        return code;
    }
}
