using Witnessmark.Ledger.Doors;

namespace Witnessmark.Ledger.Tests.Doors;

public sealed class NotCountingTests
{
    [Fact]
    public void An_entry_is_written_down_once_as_one_that_does_not_count_and_stays_so()
    {
        using var shop = new Shop();
        var store = DoorStore.Open(shop.Folder);
        Assert.Empty(store.NotCounting());
        Assert.True(store.Do(rows => rows.Flag("e1")));
        Assert.False(store.Do(rows => rows.Flag("e1")));
        Assert.True(store.Do(rows => rows.Flag("E1")));
        Assert.Equal(["E1", "e1"], DoorStore.Open(shop.Folder).NotCounting().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_was_given_once_belongs_to_the_entry_that_came_with_it_first()
    {
        using var shop = new Shop();
        var store = DoorStore.Open(shop.Folder);
        Assert.True(store.Do(rows => rows.Use("given", "e1")));
        Assert.True(store.Do(rows => rows.Use("given", "e1")));
        Assert.False(store.Do(rows => rows.Use("given", "e2")));
    }
}
