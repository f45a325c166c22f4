using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Doors;

namespace Witnessmark.Tests.Doors;

public sealed class DoorEventsTests : IDisposable
{
    private readonly ClosedShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void The_book_tells_who_came_in_and_who_did_not()
    {
        shop.Started();
        shop.SignIn(ClosedShop.Technician, "111112");
        var book = shop.Door.Book(100);
        Assert.Null(book.Fault);
        Assert.Equal(
            [
                DoorEvents.Closed,
                DoorEvents.CodeGiven,
                DoorEvents.DeviceIn,
                DoorEvents.CodeGiven,
                DoorEvents.SecretChosen,
                DoorEvents.SignedIn,
                DoorEvents.Refused,
            ],
            book.Events.Reverse().Select(e => e.What)
        );
        Assert.Equal(
            [
                (ClosedShop.Lead, "lead", true),
                (ClosedShop.Technician, "technician", true),
                (ClosedShop.Reader, "reader", false),
            ],
            book.People.Select(p => (p.Name, p.Role, p.Started))
        );
    }

    [Fact]
    public void The_whole_book_is_given_to_programs()
    {
        var bram = shop.Started().You;
        for (var i = 0; i < 300; i++)
            shop.Door.Note(DoorEvents.Exported, bram, BookLine.Took(ClosedShop.Technician, "a \"label\"", $"{i}"));
        using var told = new StringWriter();
        Assert.Equal(0, BookJson.Write(shop.Door, told));
        using var json = JsonDocument.Parse(told.ToString());
        var events = json.RootElement.GetProperty("events").EnumerateArray().ToList();
        Assert.Equal(shop.Events().Select(e => e.Says), events.Select(e => e.GetProperty("says").GetString()));
        Assert.Equal(Enumerable.Range(1, events.Count), events.Select(e => e.GetProperty("number").GetInt32()));
        Assert.Equal("lead", json.RootElement.GetProperty("people")[0].GetProperty("role").GetString());
    }

    [Fact]
    public void What_comes_from_outside_stays_on_its_line_and_in_its_direction()
    {
        var bram = shop.Started().You;
        Assert.NotNull(shop.Door.Confirm(bram, "412\nInes Tallow signed in.\u202E", ClosedShop.Pin).Yes);
        var says = shop.Door.Book(1).Events.Single().Says;
        Assert.Equal($"{ClosedShop.Technician} confirmed the release of 412\uFFFDInes Tallow signed in.\uFFFD.", says);
        Assert.Null(shop.Door.Book(1).Fault);
    }

    [Fact]
    public void A_name_that_nobody_has_comes_into_no_line()
    {
        var proof = shop.Tablet.Proof(shop.Door, "start", "Nobody At All");
        Assert.NotNull(shop.Door.Start(proof, "Nobody At All", "AAAAA-AAAAA", ClosedShop.Pin).No);
        Assert.DoesNotContain(shop.Events(), e => e.Says.Contains("Nobody", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("UPDATE event SET says = 'Nothing happened.' WHERE number = 3", "Event 3")]
    [InlineData("UPDATE event SET at = at + 1 WHERE number = 2", "Event 2")]
    [InlineData("DELETE FROM event WHERE number = 4", "Event 4")]
    public void A_changed_or_missing_event_shows(string change, string said)
    {
        shop.Started();
        using (var file = new SqliteConnection($"Data Source={Path.Combine(shop.Folder, "door.db")};Pooling=False"))
        {
            file.Open();
            using var command = file.CreateCommand();
            command.CommandText = change;
            Assert.Equal(1, command.ExecuteNonQuery());
        }
        Assert.Contains(said, shop.Door.Book(100).Fault, StringComparison.Ordinal);
    }

    [Fact]
    public void The_door_is_closed_once_and_by_a_lead_only()
    {
        Assert.Equal(409, shop.Door.Close(ClosedShop.Lead, ClosedShop.Passphrase).Status);
        using var other = new Serve.TempFolder();
        var open = new Door(other.Path, () => shop.Workshop, shop.Clock);
        Assert.False(open.IsClosed);
        Assert.Contains(
            "no lead",
            open.Close(ClosedShop.Technician, ClosedShop.Passphrase).No,
            StringComparison.Ordinal
        );
        Assert.Contains("characters", open.Close(ClosedShop.Lead, "short").No, StringComparison.Ordinal);
        Assert.False(open.IsClosed);
        Assert.Null(open.Close(ClosedShop.Lead, ClosedShop.Passphrase).No);
        Assert.True(new Door(other.Path, () => shop.Workshop, shop.Clock).IsClosed);
        shop.Workshop = shop.Workshop with { Leads = [] }; // and whoever leaves, it stays so
        Assert.True(new Door(other.Path, () => shop.Workshop, shop.Clock).IsClosed);
    }
}
