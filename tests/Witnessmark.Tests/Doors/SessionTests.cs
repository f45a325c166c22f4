using Witnessmark.Doors;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

public sealed class SessionTests
{
    [Fact]
    public void The_book_shows_who_is_signed_in_where_until_it_ended()
    {
        using var shop = new ClosedShop();
        DeviceInBook OnTablet() => shop.Door.Book(1).Devices.Single(d => d.Id == shop.Tablet.Id);
        Assert.Null(OnTablet().Here);
        shop.Started();
        Assert.Equal((ClosedShop.Technician, shop.Clock.GetUtcNow()), (OnTablet().Here, OnTablet().Since!.Value));
        shop.Clock.Pass(SessionLife.IdleShared);
        Assert.Null(OnTablet().Here); // over by its time, though nobody ended it
    }

    [Fact]
    public void Somebody_sees_where_else_they_are_signed_in_and_ends_it_there_by_another_secret()
    {
        using var shop = new ClosedShop();
        using var other = new TestDevice("d-other");
        Assert.Null(shop.LetIn(other).No);
        var here = shop.Started();
        Assert.Empty(shop.Door.ElsewhereOf(here.You));
        var there = shop
            .Door.SignIn(
                other.Proof(shop.Door, "sign in", ClosedShop.Technician),
                ClosedShop.Technician,
                ClosedShop.Pin
            )
            .Yes!;
        Assert.Equal(
            [new SignedInElsewhere("Tablet d-other", shop.Clock.GetUtcNow())],
            shop.Door.ElsewhereOf(here.You)
        );
        var again = shop.Door.ChangeSecret(here.You, ClosedShop.Pin, "570816").Yes!;
        Assert.Empty(shop.Door.ElsewhereOf(again.You));
        Assert.Null(shop.Door.Who(there.Token, deed: false));
        Assert.Null(shop.Door.Who(here.Token, deed: false)); // and here it is another one from now on
        Assert.NotNull(shop.Door.Who(again.Token, deed: false));
    }

    [Fact]
    public void On_a_shared_device_a_quarter_of_an_hour_without_a_deed_ends_it()
    {
        using var shop = new ClosedShop();
        var token = shop.Started().Token;
        for (var minutes = 0; minutes < 60; minutes += 10)
        {
            shop.Clock.Pass(TimeSpan.FromMinutes(10));
            Assert.NotNull(shop.Door.Who(token, deed: true));
        }
        shop.Clock.Pass(TimeSpan.FromMinutes(15));
        Assert.Null(shop.Door.Who(token, deed: true));
        Assert.Contains(shop.Events(), e => e.What == DoorEvents.SignedOut);
    }

    [Fact]
    public void What_the_program_fetches_by_itself_is_no_deed()
    {
        using var shop = new ClosedShop();
        var token = shop.Started().Token;
        for (var minutes = 0; minutes < 14; minutes++)
        {
            shop.Clock.Pass(TimeSpan.FromMinutes(1));
            Assert.NotNull(shop.Door.Who(token, deed: false));
        }
        shop.Clock.Pass(TimeSpan.FromMinutes(1));
        Assert.Null(shop.Door.Who(token, deed: false));
    }

    [Fact]
    public void Deeds_do_not_carry_it_over_the_day()
    {
        using var shop = new ClosedShop();
        var token = shop.Started().Token;
        for (var minutes = 10; minutes < 12 * 60; minutes += 10)
        {
            shop.Clock.Pass(TimeSpan.FromMinutes(10));
            Assert.NotNull(shop.Door.Who(token, deed: true));
        }
        shop.Clock.Pass(TimeSpan.FromMinutes(10));
        Assert.Null(shop.Door.Who(token, deed: true));
    }

    [Fact]
    public void On_a_device_of_ones_own_it_lasts_a_working_day()
    {
        using var shop = new ClosedShop(shared: false);
        var token = shop.Started().Token;
        shop.Clock.Pass(TimeSpan.FromHours(7.9));
        Assert.NotNull(shop.Door.Who(token, deed: true));
        shop.Clock.Pass(TimeSpan.FromHours(8));
        Assert.Null(shop.Door.Who(token, deed: true));
    }

    [Fact]
    public void It_survives_a_restart_of_the_server_and_no_token_is_kept()
    {
        using var shop = new ClosedShop();
        var token = shop.Started().Token;
        Assert.Equal(ClosedShop.Technician, shop.Reopened().Who(token, deed: true)!.Person);
        foreach (var file in Directory.GetFiles(shop.Folder, "door.db*"))
        {
            var kept = System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file));
            Assert.DoesNotContain(token, kept, StringComparison.Ordinal);
            Assert.DoesNotContain(ClosedShop.Pin, kept, StringComparison.Ordinal);
            Assert.DoesNotContain(ClosedShop.Passphrase, kept, StringComparison.Ordinal);
        }
    }

    // the door's key is made on first use; made in a transaction of its own it would wait for the one it is needed in
    [Fact]
    public void What_is_asked_first_of_a_door_just_closed_may_be_a_confirmation()
    {
        using var folder = new TempFolder();
        using var shop = new ClosedShop();
        var door = new Door(folder.Path, () => shop.Workshop, shop.Clock);
        Assert.Null(door.Close(ClosedShop.Lead, ClosedShop.Passphrase).No);
        var lead = new SignedIn(
            ClosedShop.Lead,
            Role.Lead,
            "d-desk",
            shop.Clock.GetUtcNow().AddHours(1),
            shop.Clock.GetUtcNow()
        );
        var given = door.Confirm(lead, "412", ClosedShop.Passphrase).Yes;
        Assert.True(door.IsConfirmed(given, "e1", ClosedShop.Lead, "d-desk", "412"));
    }

    [Fact]
    public void Who_confirms_a_release_shows_the_secret_again()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        Assert.NotNull(shop.Door.Confirm(bram, "412", "111112").No);
        var given = shop.Door.Confirm(bram, "412", ClosedShop.Pin).Yes!;
        bool For(string? confirmation, string entry, string person, string device, string job) =>
            shop.Door.IsConfirmed(confirmation, entry, person, device, job);
        Assert.False(For(given, "e1", ClosedShop.Technician, bram.Device, "413"));
        Assert.False(For(given, "e1", ClosedShop.Lead, bram.Device, "412"));
        Assert.False(For(given, "e1", ClosedShop.Technician, "d-other", "412"));
        Assert.False(For("made up", "e1", ClosedShop.Technician, bram.Device, "412"));
        Assert.False(For("1" + given, "e1", ClosedShop.Technician, bram.Device, "412"));
        Assert.False(For(null, "e1", ClosedShop.Technician, bram.Device, "412"));
        Assert.True(For(given, "e1", ClosedShop.Technician, bram.Device, "412"));
        Assert.True(For(given, "e1", ClosedShop.Technician, bram.Device, "412")); // the same entry sent again
        Assert.False(For(given, "e2", ClosedShop.Technician, bram.Device, "412")); // and no other
    }
}
