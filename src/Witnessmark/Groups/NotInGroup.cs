using Witnessmark.Serve;

namespace Witnessmark.Groups;

/// <summary>What makes no sense in a group, its servers say by name.</summary>
internal static class NotInGroup
{
    /// <summary>This address does nothing in a group.</summary>
    /// <param name="endpoint">The address.</param>
    /// <param name="why">The sentence that is answered.</param>
    public static RouteHandlerBuilder OnlyInFolder(this RouteHandlerBuilder endpoint, Sentence why) =>
        endpoint.AddEndpointFilter(
            (context, next) =>
                context.HttpContext.RequestServices.GetRequiredService<ServedShop>().Place.IsOfGroup
                    ? ValueTask.FromResult<object?>(Failure.Said(StatusCodes.Status501NotImplemented, why))
                    : next(context)
        );
}
