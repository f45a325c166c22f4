using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Witnessmark.Doors;
using Witnessmark.Ledger;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Doors;

public sealed class NeedsOfEndpointsTests
{
    [Fact]
    public async Task Every_address_says_who_may_use_it_and_the_guide_says_the_same()
    {
        var builder = WebApplication.CreateBuilder();
        builder.Services.AddSingleton<ServedShop>().AddSingleton<ShopLedger>().AddSingleton<Door>();
        builder
            .Services.AddSingleton(new DataFolder("nowhere"))
            .AddSingleton<DayEndpoint>()
            .AddSingleton(TimeProvider.System);
        await using var app = builder.Build();
        app.MapApi();
        var lines = ((IEndpointRouteBuilder)app)
            .DataSources.SelectMany(source => source.Endpoints)
            .Cast<RouteEndpoint>()
            .SelectMany(Lines)
            .ToList();
        Assert.NotEmpty(lines);
        var guide = await File.ReadAllTextAsync(
            Path.Combine(AppContext.BaseDirectory, "Guides", "door.md"),
            TestContext.Current.CancellationToken
        );
        foreach (var line in lines)
            Assert.Contains(line, guide, StringComparison.Ordinal);
        Assert.Equal(lines.Count, guide.Split('\n').Count(l => l.StartsWith("| `", StringComparison.Ordinal)));
    }

    private static IEnumerable<string> Lines(RouteEndpoint endpoint)
    {
        var needs = endpoint.Metadata.GetMetadata<Needs>();
        Assert.True(needs is not null, $"{endpoint.RoutePattern.RawText} says nothing.");
        var who = needs.Role switch
        {
            null => "anyone",
            Role.Reader => "reader, technician, lead",
            Role.Technician => "technician, lead",
            _ when endpoint.Metadata.GetMetadata<ShownLately>() is not null => "lead, passphrase again",
            _ => "lead",
        };
        var methods = endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["any"];
        return methods.Select(m => $"| `{m} {endpoint.RoutePattern.RawText}` | {who} |");
    }
}
