using System.Globalization;
using Witnessmark.Doctor;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Groups;

/// <summary>Looks at everything that a shop of a group stands on. Changes nothing.</summary>
public static class GroupExamination
{
    /// <summary>All that was looked at, good or not.</summary>
    public static IReadOnlyList<Finding> Of(GroupFile file, DateTimeOffset now)
    {
        try
        {
            using var shop = GroupShop.Open(file.Connection, TimeProvider.System);
            return
            [
                OfStore(shop),
                OfStandby(shop),
                OfLedger(shop),
                OfDoor(shop),
                OfClock(shop, now),
                OfPhotographs(shop),
                OfKey(shop, file),
            ];
        }
        catch (LedgerUnavailable broken)
        {
            return [new("store", false, broken.Message)];
        }
    }

    private static Finding OfStore(GroupShop shop) =>
        new(
            "store",
            true,
            $"The shop \"{shop.Name}\" at {shop.Machines().Primary}; what it acknowledges is on its disk."
        );

    private static Finding OfStandby(GroupShop shop) =>
        shop.Machines().Standbys is { Length: > 0 } names
            ? new("standby", true, $"Has each commit before it is acknowledged: {names}.")
            : new(
                "standby",
                false,
                "None is waited for (synchronous_standby_names is empty): when this machine is lost, so is what was acknowledged since the last backup."
            );

    private static Finding OfLedger(GroupShop shop)
    {
        var found = shop.Check();
        return found.Faults.Count == 0
            ? new("ledger", true, $"Intact: {found.Entries} entries in {found.Jobs} jobs; {found.SetAside} set aside.")
            : new("ledger", false, string.Join(" ", found.Faults));
    }

    private static Finding OfDoor(GroupShop shop) =>
        EventChain.Fault(shop.Door.Look(rows => rows.AllEvents())) is { } fault
            ? new("door", false, fault)
            : new("door", true, "Its events are as they were written.");

    private static Finding OfClock(GroupShop shop, DateTimeOffset now) => Examination.OfClock(shop.LastReceived(), now);

    private static Finding OfPhotographs(GroupShop shop)
    {
        var (count, changed) = shop.Files.CheckPhotographs();
        return changed.Count == 0
            ? new("photographs", true, string.Create(CultureInfo.InvariantCulture, $"{count}, each as its name says."))
            : new("photographs", false, $"Not the pictures that their names say: {string.Join(", ", changed)}.");
    }

    private static Finding OfKey(GroupShop shop, GroupFile file)
    {
        try
        {
            return shop.Files.Secret(SealedSecret.SigningKey) is null
                ? new("key", true, "None made yet; the first paper makes it.")
                : new(
                    "key",
                    true,
                    $"{GroupPlace.SigningKey(shop, file.OpensSecrets).Seal.Key.Id}, opened by this file."
                );
        }
        catch (FormatException wrong)
        {
            return new("key", false, wrong.Message);
        }
    }
}
