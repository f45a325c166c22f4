using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Serve;

/// <summary>A server of tomorrow beside devices of today: the next protocols are invented, there is one so far.</summary>
public sealed class ProtocolsTests
{
    [Theory]
    [InlineData(1, 1, true)]
    [InlineData(1, 0, false)]
    [InlineData(1, 2, false)]
    [InlineData(2, 1, true)]
    [InlineData(2, 2, true)]
    [InlineData(2, 3, false)]
    [InlineData(3, 1, false)]
    [InlineData(3, 2, true)]
    public void The_newest_and_the_one_before_bring_entries(int newest, int spoken, bool taken)
    {
        using var json = JsonDocument.Parse($$"""{"protocol":{{spoken}},"device":"bench","epoch":1,"entries":[]}""");
        var (batch, refused) = BatchJson.Read(json.RootElement, new(newest));
        Assert.Equal(taken, batch is not null);
        Assert.Equal(taken, refused is null);
    }

    [Theory]
    [InlineData(1, null, 1)]
    [InlineData(2, null, 1)] // a device of today, which says nothing
    [InlineData(2, "1", 1)]
    [InlineData(2, "2", 2)]
    [InlineData(2, "3", 2)] // it is told what is spoken here, and keeps what it has
    [InlineData(3, null, 3)]
    [InlineData(3, "2", 2)]
    [InlineData(2, "two", 2)]
    public void Each_device_is_answered_in_what_it_speaks(int newest, string? says, int answered)
    {
        var request = new DefaultHttpContext().Request;
        if (says is not null)
            request.Headers[Protocols.Header] = says;
        Assert.Equal(answered, new Protocols(newest).For(request));
    }

    [Fact]
    public void What_is_spoken_is_said()
    {
        Assert.Equal("protocol 1", $"{new Protocols(1)}");
        Assert.Equal("protocols 2 and 3", $"{new Protocols(3)}");
    }
}
