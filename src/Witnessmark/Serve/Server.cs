using Witnessmark.Bench.AtThePoint;
using Witnessmark.Calc;
using Witnessmark.Certificates;
using Witnessmark.Doctor;
using Witnessmark.Doors;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.OwnShop;

namespace Witnessmark.Serve;

/// <summary>Starts the server and runs it until it is told to stop.</summary>
public static class Server
{
    private const long LargestRequest = 4 * 1024 * 1024;

    /// <summary>Exit code: 0 stopped as asked, 2 could not start.</summary>
    public static int Run(DataFolder data, Listening listening, bool demo) =>
        Try(() =>
        {
            OwnFolder.Make(data.Path);
            if (DataPlace.Refusal(data.Path) is { } refusal)
                return CannotStart(refusal);
            using var held = ServedFolder.Hold(data.Path);
            var (shown, missing) = listening.Shown(data, TimeProvider.System, Console.Error);
            if (missing is not null)
                return CannotStart(missing);
            int ended;
            do
            {
                DemoPutAway.Finish(data.Path);
                if (demo)
                    DemoShop.Fill(data, AppContext.BaseDirectory);
                ended = Serve(
                    data,
                    ref listening,
                    shown,
                    () => FolderPlace.Opened(data),
                    shop => Begin(data, demo, shop),
                    $"Data folder: {data.Path}"
                );
            } while (ended == ExitCode.Ok && DemoPutAway.IsBegun(data.Path));
            return ended;
        });

    private static void Begin(DataFolder data, bool demo, ServedShop shop)
    {
        if (!demo || !DemoShop.Is(data))
            return;
        DemoShop.FirstCampaigns(data, AppContext.BaseDirectory, TimeProvider.System);
        DemoShop.OpenFirstJob(shop.Ledger, shop.Bench, TimeProvider.System);
    }

    /// <summary>The same for one of several servers of a shop in the store of its group; of the folder the files alone are read.</summary>
    internal static int Run(DataFolder data, Listening listening, bool demo, Func<GroupFile> group) =>
        Try(() =>
        {
            if (GroupStart.Refusal(data, listening, demo) is { } refusal)
                return CannotStart(refusal);
            var (shown, missing) = listening.Shown(data, TimeProvider.System, Console.Error);
            if (missing is not null)
                return CannotStart(missing);
            using var shop = GroupShop.Open(group().Connection, TimeProvider.System);
            var place = new GroupPlace(shop, group().OpensSecrets);
            shop.HearOthers();
            return Serve(
                data,
                ref listening,
                shown,
                () => place,
                _ => { },
                $"Shop {shop.Name} in the store at {shop.Machines().Primary}; its files: {data.Path}"
            );
        });

    private static int Serve(
        DataFolder data,
        ref Listening listening,
        ShownCertificate? shown,
        Func<ShopPlace> place,
        Action<ServedShop> begin,
        string where
    )
    {
        if (ServedShop.Open(data, place, TimeProvider.System, Console.Error) is not { } shop)
            return CannotStart($"The files in {data.Path} have the mistakes above; mend them and start again.");
        foreach (var gap in SheetGaps.Of(shop.Bench))
            Console.WriteLine(gap);
        foreach (var elsewhere in LawElsewhere.In(shop.Bench))
            Console.WriteLine(elsewhere);
        using var ledger = shop.Ledger; // nothing of the folder stays open behind it
        begin(shop);
        using var app = Build(shop, data, listening, shown);
        app.StartAt(listening);
        Console.WriteLine(where);
        foreach (var risk in ServedRights.Risks(data.Path, Environment.IsPrivilegedProcess, shop.Place.IsOfGroup))
            Console.WriteLine(risk);
        if (
            !shop.Place.IsOfGroup
            && Examination.OfRoom(DataPlace.DriveOf(data.Path)!.AvailableFreeSpace) is { Good: false } full
        )
            Console.WriteLine(full.Says);
        foreach (var line in ListeningText.Lines(app.Urls, listening, shown))
            Console.WriteLine(line);
        listening = listening.As(app.Urls);
        app.WaitForShutdown();
        return ExitCode.Ok;
    }

    private static int Try(Func<int> work)
    {
        try
        {
            return work();
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or FormatException)
        {
            return CannotStart(broken.Message);
        }
    }

    private static int CannotStart(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Malformed;
    }

    private static WebApplication Build(ServedShop shop, DataFolder data, Listening listening, ShownCertificate? shown)
    {
        // the pages lie beside the program, wherever it is started from
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory }
        );
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.Open(listening, shown);
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.Limits.MaxRequestBodySize = LargestRequest;
            server.AddServerHeader = false;
        });
        builder.Logging.SetMinimumLevel(LogLevel.Warning).AddFilter(DoorOutput.Category, LogLevel.Information);
        builder.Services.AddSingleton(shop).AddSingleton(shop.Ledger).AddSingleton(data);
        builder.Services.AddSingleton(TimeProvider.System).AddSingleton<DayEndpoint>();
        builder.Services.AddSingleton(shop.Door).AddDoorLimit();
        builder.Services.AddCompression();
        var app = builder.Build();
        app.UseBehindProxy(listening);
        app.UseStrictTransport(listening);
        app.UseResponseHeaders();
        app.UsePlainFailures();
        DoorOutput.Write(app);
        RefusedRequests.Watch(app);
        app.UsePlainHttp(listening);
        app.UseDoor();
        app.UseNewestFigures();
        app.UseRateLimiter();
        app.UseCompression();
        app.MapTrust(listening, shown);
        app.MapApi();
        app.MapPages();
        return app;
    }
}
