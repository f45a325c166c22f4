using Witnessmark.Doors;
using Witnessmark.Groups;
using Witnessmark.OwnShop;
using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>The whole API.</summary>
public static class Api
{
    /// <summary>What the client and this server agreed on; both say it.</summary>
    public static readonly Protocols Protocols = new(1);

    private static Sentence OwnShop =>
        $"A group of shops holds no invented one: its shops are made by witnessmark group add and migrate.";

    /// <summary>Puts every path of the API where it is.</summary>
    public static void MapApi(this WebApplication app)
    {
        var api = app.MapGroup("/api");
        api.MapGet("/health", () => new { Ok = true }).ForAnyone();
        api.MapGet("/workbench", WorkbenchFilesEndpoint.Get).ForReaders();
        api.MapPut("/sheets/{sheet}/figures/{key}", FiguresEndpoint.Put).ForLeads().ShownLately();
        api.MapPost("/own-shop", OwnShopEndpoint.Post).OnlyInFolder(OwnShop).ForLeads().ShownLately();
        api.MapGet("/entries", EntriesEndpoint.Get).ForReaders();
        api.MapPost("/entries", EntriesEndpoint.Post).ForTechnicians();
        api.MapGet("/news", NewsEndpoint.Get).ForReaders();
        api.MapGet("/day", (DayEndpoint day, string? language) => day.Get(language)).ForReaders();
        api.MapGet("/campaigns", CampaignsEndpoint.Get).ForReaders();
        api.MapGet("/machines", MachinesEndpoint.Find).ForReaders();
        api.MapGet("/machines/{id}", MachinesEndpoint.Get).ForReaders();
        api.MapGet("/machines/{id}/points/{point}/fleet", FleetEndpoint.Get).ForReaders();
        api.MapGet("/stock", StockEndpoint.Get).ForReaders();
        api.MapPost("/stock/moves", StockEndpoint.Post).ForTechnicians();
        api.MapDelete("/machines/{id}/owner", MachinesEndpoint.ForgetOwner).ForLeads().ShownLately();
        api.MapGet("/photographs/{sha256}", PhotographsEndpoint.Get).ForReaders();
        api.MapPut("/photographs/{sha256}", PhotographsEndpoint.Put).ForTechnicians();
        api.MapGet("/jobs/{job}/handover.pdf", PaperEndpoints.HandoverSheetOf)
            .NamedByJob()
            .ForReaders("a handover sheet");
        api.MapGet("/jobs/{job}/estimate.pdf", PaperEndpoints.EstimateSheetOf).NamedByJob().ForReaders("an estimate");
        api.MapGet("/jobs/{job}/label.pdf", PaperEndpoints.LabelOf).NamedByJob().ForReaders("a label");
        api.MapGet("/jobs/{job}/record.html", PaperEndpoints.RecordOf).NamedByJob().ForReaders("a record");
        api.MapGet("/jobs/{job}/log-book.json", PaperEndpoints.LogBookOf).NamedByJob().ForReaders("a log book");
        api.MapDoor();
        api.Map("/{**rest}", () => Failure.Of(404, "There is nothing here.")).ForAnyone();
    }

    /// <summary>The pages: files of the client, and its first page for every other address.</summary>
    public static void MapPages(this WebApplication app)
    {
        // Written by publish; with it files go out compressed as they were packed. Run from its build folder the program has none.
        var packed = Path.Combine(AppContext.BaseDirectory, "witnessmark.staticwebassets.endpoints.json");
        if (File.Exists(packed))
            app.MapStaticAssets(packed);
        app.UseStaticFiles();
        app.MapFallbackToFile("index.html");
        foreach (var named in Named)
            app.MapFallbackToFile($"/{named}/{{**rest}}", "index.html");
    }

    // by itself the fallback takes a name with a dot in it, as figures have, for a file that is missing
    private static readonly string[] Named = ["compare", "day", "figures", "jobs", "machines", "shelf"];
}
