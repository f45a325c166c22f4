namespace Witnessmark.Serve;

/// <summary>In a group a figure may have been set at another server: before an address of the API answers, this one looks.</summary>
internal static class NewestFigures
{
    /// <summary>Behind the door: a stranger makes nobody look.</summary>
    public static void UseNewestFigures(this WebApplication app)
    {
        var shop = app.Services.GetRequiredService<ServedShop>();
        if (shop.Place.Sheets is null)
            return;
        app.Use(
            (context, next) =>
            {
                if (
                    context.Request.Path.StartsWithSegments("/api")
                    && !context.Request.Path.StartsWithSegments("/api/health")
                )
                    shop.LookForFigures();
                return next(context);
            }
        );
    }
}
