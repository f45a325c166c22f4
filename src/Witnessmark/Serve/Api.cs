using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>The whole API.</summary>
public static class Api
{
    /// <summary>What the client and this server agreed on; both say it.</summary>
    public const int Protocol = 1;

    /// <summary>Puts every path of the API where it is.</summary>
    public static void MapApi(this WebApplication app)
    {
        var api = app.MapGroup("/api");
        api.MapGet("/health", () => new { Ok = true });
        api.MapGet("/workbench", WorkbenchFilesEndpoint.Get);
        api.MapPut("/sheets/{sheet}/figures/{key}", FiguresEndpoint.Put);
        api.MapGet("/entries", EntriesEndpoint.Get);
        api.MapPost("/entries", EntriesEndpoint.Post);
        api.MapGet("/day", (DayEndpoint day, string? language) => day.Get(language));
        api.MapGet("/campaigns", CampaignsEndpoint.Get);
        api.MapGet("/machines", MachinesEndpoint.Find);
        api.MapGet("/machines/{id}", MachinesEndpoint.Get);
        api.MapGet("/machines/{id}/points/{point}/fleet", FleetEndpoint.Get);
        api.MapGet("/stock", StockEndpoint.Get);
        api.MapPost("/stock/moves", StockEndpoint.Post);
        api.MapDelete("/machines/{id}/owner", MachinesEndpoint.ForgetOwner);
        api.MapGet("/photographs/{sha256}", PhotographsEndpoint.Get);
        api.MapPut("/photographs/{sha256}", PhotographsEndpoint.Put);
        api.MapGet("/jobs/{job}/handover.pdf", PaperEndpoints.HandoverSheetOf);
        api.MapGet("/jobs/{job}/estimate.pdf", PaperEndpoints.EstimateSheetOf);
        api.MapGet("/jobs/{job}/label.pdf", PaperEndpoints.LabelOf);
        api.MapGet("/jobs/{job}/record.html", PaperEndpoints.RecordOf);
        api.MapGet("/jobs/{job}/log-book.json", PaperEndpoints.LogBookOf);
        api.Map("/{**rest}", () => Failure.Of(404, "There is nothing here."));
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
    }
}
