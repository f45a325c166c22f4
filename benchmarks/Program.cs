using Witnessmark.Benchmarks;

switch (args)
{
    case ["shims"]:
        ShimTimes.Print();
        return 0;
    case ["order"]:
        OrderTimes.Print();
        return 0;
    case ["campaigns"]:
        CampaignTimes.Print();
        return 0;
    case ["machines"]:
        MachineTimes.Print();
        return 0;
    default:
        Console.Error.WriteLine("dotnet run -c Release --project benchmarks -- shims|order|campaigns|machines");
        return 2;
}
