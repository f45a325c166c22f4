using Witnessmark.Doors;

namespace Witnessmark.Tests.Doors;

public sealed class ShownAgainTests : IDisposable
{
    private readonly ClosedShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void A_session_that_is_open_for_longer_than_some_minutes_is_not_enough_until_the_passphrase_is_shown_again()
    {
        var lead = In();
        Assert.True(Lately(lead, null)); // it was just shown, at sign-in
        shop.Clock.Pass(ShownAgain.Life + TimeSpan.FromSeconds(1));
        Assert.False(Lately(lead, null));

        Assert.Equal("That is not it.", shop.Door.ShowAgain(lead.You, lead.Token, "ten grey herons on the weir").No);
        var shown = shop.Door.ShowAgain(lead.You, lead.Token, ClosedShop.Passphrase).Yes!;
        Assert.True(Lately(lead, shown));
        Assert.False(Lately(lead, shown + "x"));
        Assert.False(Lately(lead with { Token = "another session" }, shown));
        shop.Clock.Pass(ShownAgain.Life + TimeSpan.FromSeconds(1));
        Assert.False(Lately(lead, shown));
    }

    private bool Lately(CameIn lead, string? shown) => shop.Door.ShownLately(lead.You, lead.Token, shown);

    private CameIn In() => shop.SignIn(ClosedShop.Lead, ClosedShop.Passphrase).Yes!;
}
