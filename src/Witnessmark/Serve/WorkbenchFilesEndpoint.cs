namespace Witnessmark.Serve;

/// <summary>The files of the workbench as they are: the client reads them with the same code as the server.</summary>
public static class WorkbenchFilesEndpoint
{
    /// <summary><c>GET /api/workbench</c></summary>
    public static IResult Get(ServedShop shop, DataFolder data) =>
        Results.Json(
            new
            {
                Api.Protocol,
                Ledger = shop.Ledger.Id,
                Files = shop.Files.Select(file => new { file.Name, file.Text }),
                Demo = !shop.Place.IsOfGroup && DemoShop.Is(data),
                shop.PutAway,
            }
        );
}
