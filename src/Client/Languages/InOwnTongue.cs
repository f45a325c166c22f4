using System.Net.Http.Headers;

namespace Witnessmark.Client.Languages;

/// <summary>Asks the shop in the language of whoever works here: the browser's own may be another one.</summary>
internal sealed class InOwnTongue : DelegatingHandler
{
    protected override Task<HttpResponseMessage> SendAsync(
        HttpRequestMessage request,
        CancellationToken cancellationToken
    )
    {
        request.Headers.AcceptLanguage.Add(new StringWithQualityHeaderValue(OwnTongue.Code));
        return base.SendAsync(request, cancellationToken);
    }
}
