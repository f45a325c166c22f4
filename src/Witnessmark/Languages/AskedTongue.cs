namespace Witnessmark.Languages;

/// <summary>The language that a request asks for: <c>?language=de</c>, else the first of <c>Accept-Language</c> that there is, else English.</summary>
/// <remarks><b>Source.</b> RFC 9110, 12.5.4: ranges with weights; of equals the one that stands first.</remarks>
internal static class AskedTongue
{
    public static Tongue Of(HttpRequest request) =>
        ShopTongues.Named(request.Query["language"].ToString()) ?? Accepted(request) ?? Tongue.English;

    private static Tongue? Accepted(HttpRequest request) =>
        request
            .GetTypedHeaders()
            .AcceptLanguage.Where(range => range.Quality is not 0)
            .OrderByDescending(range => range.Quality ?? 1)
            .Select(range => ShopTongues.Named(range.Value.ToString().Split('-')[0].ToLowerInvariant()))
            .FirstOrDefault(tongue => tongue is not null);
}
