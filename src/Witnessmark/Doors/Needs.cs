namespace Witnessmark.Doors;

/// <summary>What an address of the API asks for while the door is closed. One that says nothing lets nobody in.</summary>
/// <param name="Role">At least this; null: nobody has to be signed in.</param>
/// <param name="Export">What leaves the shop by it, for the book of the door; null: nothing worth a line.</param>
public sealed record Needs(Role? Role, string? Export = null);

/// <summary>The secret has to have been shown within the last minutes: an open session alone is not enough.</summary>
public sealed record ShownLately;

/// <summary>How an address says it.</summary>
public static class NeedsOfEndpoints
{
    /// <summary>Nobody has to be signed in.</summary>
    public static T ForAnyone<T>(this T endpoint)
        where T : IEndpointConventionBuilder => endpoint.WithMetadata(new Needs(null));

    /// <summary>Everybody who is signed in.</summary>
    public static T ForReaders<T>(this T endpoint, string? export = null)
        where T : IEndpointConventionBuilder => endpoint.WithMetadata(new Needs(Role.Reader, export));

    /// <summary>Technicians and leads.</summary>
    public static T ForTechnicians<T>(this T endpoint)
        where T : IEndpointConventionBuilder => endpoint.WithMetadata(new Needs(Role.Technician));

    /// <summary>Leads.</summary>
    public static T ForLeads<T>(this T endpoint)
        where T : IEndpointConventionBuilder => endpoint.WithMetadata(new Needs(Role.Lead));

    /// <summary>With the secret shown within the last minutes.</summary>
    public static T ShownLately<T>(this T endpoint)
        where T : IEndpointConventionBuilder => endpoint.WithMetadata(new ShownLately());
}
