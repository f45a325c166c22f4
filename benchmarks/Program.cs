using System.Globalization;
using Witnessmark.Benchmarks;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["verdict"]:
        CallTimes.PrintVerdict();
        return 0;
    case ["correction"]:
        CallTimes.PrintCorrection();
        return 0;
    case ["stream"]:
        StreamTimes.Print();
        return 0;
    case ["browser"]:
        await BrowserTimes.Print();
        return 0;
    case ["start"]:
        await StartTimes.Print();
        return 0;
    case ["shims"]:
        ShimTimes.Print();
        return 0;
    case ["order"]:
        OrderTimes.Print();
        return 0;
    case ["replan"]:
        ReplanTimes.Print();
        return 0;
    case ["day"]:
        DayTimes.Print();
        return 0;
    case ["campaigns"]:
        CampaignTimes.Print();
        return 0;
    case ["machines"]:
        MachineTimes.Print();
        return 0;
    case ["visits"]:
        await VisitTimes.Print();
        return 0;
    case ["oracles", var count] when int.TryParse(count, out var instances):
        return OracleRun.Print(instances);
    case ["sheet"]:
        SheetTimes.Print();
        return 0;
    case ["verify"]:
        VerifyTimes.Print();
        return 0;
    case ["append"]:
        await AppendTimes.Print();
        return 0;
    case ["growth"]:
        GrowthTimes.Print();
        return 0;
    case ["load", var seconds] when int.TryParse(seconds, out var time):
        await LoadTimes.Print(time);
        return 0;
    case ["fuzz", var seconds, .. var more] when double.TryParse(seconds, out var time):
        return FuzzRun.Print(time, more is [var seed] ? int.Parse(seed) : 1);
    default:
        Console.Error.WriteLine(
            "dotnet run -c Release --project benchmarks -- verdict|correction|stream|browser|start|shims|order|replan|day|campaigns|machines|visits|sheet|verify|append|growth|load SECONDS|oracles COUNT|fuzz SECONDS [SEED]"
        );
        return 2;
}
