using Witnessmark.Bench.Record;
using Witnessmark.Doors;

namespace Witnessmark.Tests.Doors;

/// <summary>A lead gives their word on a technician's tablet.</summary>
public sealed class GivenWordTests
{
    private static readonly Word Drop = Word.OfDrop(ClosedShop.Lead, "front-pads");

    [Fact]
    public void It_is_good_for_one_entry_of_one_job_on_one_device_and_for_what_it_was_given()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        var given = shop.Door.GiveWord(bram, Drop, "412", ClosedShop.Passphrase).Yes!;
        bool For(string? what, string entry, Word word, string device, string job) =>
            shop.Door.IsGiven(what, entry, word, device, job);
        Assert.False(For(given, "e1", Drop, bram.Device, "413"));
        Assert.False(For(given, "e1", Drop, "d-other", "412"));
        Assert.False(For(given, "e1", Word.OfDrop(ClosedShop.Lead, "rear-pads"), bram.Device, "412"));
        Assert.False(For(given, "e1", Word.OfLeaving(ClosedShop.Lead, "front-pads"), bram.Device, "412"));
        Assert.False(For("1" + given, "e1", Drop, bram.Device, "412"));
        Assert.False(For("made up", "e1", Drop, bram.Device, "412"));
        Assert.False(For(null, "e1", Drop, bram.Device, "412"));
        Assert.True(For(given, "e1", Drop, bram.Device, "412"));
        Assert.True(For(given, "e1", Drop, bram.Device, "412")); // the same entry sent again
        Assert.False(For(given, "e2", Drop, bram.Device, "412")); // and no other
    }

    [Fact]
    public void Where_one_text_ends_and_the_next_begins_belongs_to_it()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        var asked = Word.OfVouching(ClosedShop.Lead, "a\",\"b", "c");
        var given = shop.Door.GiveWord(bram, asked, "412", ClosedShop.Passphrase).Yes!;
        Assert.False(
            shop.Door.IsGiven(given, "e1", Word.OfVouching(ClosedShop.Lead, "a", "b\",\"c"), bram.Device, "412")
        );
        Assert.True(shop.Door.IsGiven(given, "e1", asked, bram.Device, "412"));
    }

    [Fact]
    public void A_day_later_it_is_over()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        var early = Given(shop, bram);
        shop.Clock.Pass(TimeSpan.FromSeconds(1)); // or the two would be the same
        var late = Given(shop, bram);
        shop.Clock.Pass(TimeSpan.FromDays(1) - TimeSpan.FromSeconds(1));
        Assert.True(shop.Door.IsGiven(early, "e1", Drop, bram.Device, "412"));
        shop.Clock.Pass(TimeSpan.FromSeconds(2));
        Assert.False(shop.Door.IsGiven(late, "e2", Drop, bram.Device, "412"));
    }

    [Fact]
    public void It_is_given_by_the_secret_of_the_one_who_is_named_and_by_no_other()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        Assert.NotNull(shop.Door.GiveWord(bram, Drop, "412", ClosedShop.Pin).No);
        // who is no lead drops no safety point, with whatever secret
        var own = Word.OfDrop(ClosedShop.Technician, "front-pads");
        Assert.Contains("no lead", $"{shop.Door.GiveWord(bram, own, "412", ClosedShop.Pin).No}");
        var reader = Word.OfLeaving(ClosedShop.Reader, "26X-011");
        Assert.Contains("does not work", $"{shop.Door.GiveWord(bram, reader, "412", "640982").No}");
        Assert.NotNull(
            shop.Door.GiveWord(bram, Word.OfVouching(ClosedShop.Technician, "p", "f"), "412", ClosedShop.Pin).Yes
        );
    }

    [Fact]
    public void Ten_wrong_ones_shut_the_door_to_the_name_as_anywhere()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        for (var i = 0; i < Waits.Most; i++)
        {
            Assert.NotNull(shop.Door.GiveWord(bram, Drop, "412", "wrong").No);
            shop.Clock.Pass(TimeSpan.FromHours(1));
        }
        Assert.Contains("shut to this name", $"{shop.Door.GiveWord(bram, Drop, "412", ClosedShop.Passphrase).No}");
    }

    [Fact]
    public void Who_led_when_it_was_given_led_when_the_entry_comes()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        var given = Given(shop, bram);
        shop.Workshop = shop.Workshop with { Leads = [] };
        Assert.NotNull(shop.Door.GiveWord(bram, Drop, "412", ClosedShop.Passphrase).No);
        Assert.True(shop.Door.IsGiven(given, "e1", Drop, bram.Device, "412"));
    }

    [Fact]
    public void The_book_tells_who_gave_which()
    {
        using var shop = new ClosedShop();
        var bram = shop.Started().You;
        Given(shop, bram);
        var told = shop.Events()[^1];
        Assert.Equal((DoorEvents.WordGiven, ClosedShop.Lead, bram.Device), (told.What, told.Person, told.Device));
        Assert.Equal($"{ClosedShop.Lead} gave their word in 412: front-pads is dropped.", told.Says);
    }

    private static string Given(ClosedShop shop, SignedIn where) =>
        shop.Door.GiveWord(where, Drop, "412", ClosedShop.Passphrase).Yes!;
}
