using System.Net;
using System.Text.Json;
using Witnessmark.Bench.OwnShop;
using Witnessmark.Bench.Toml;
using Witnessmark.Client.Device;
using Witnessmark.Client.Doors;

namespace Witnessmark.Client.OwnShop;

/// <summary>Puts a shop of one's own in place of the demo: at the shop, and on this device.</summary>
internal sealed class OwnShopDeed(AtHand hand, DeviceStore store, Shop shop)
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    /// <summary>What the reader of the shop's files would find wrong.</summary>
    public IReadOnlyList<string> Mistakes(NewShop wanted)
    {
        var before = Now().Files.Select(f => new SourceText(f.Name, f.Text));
        return
        [
            .. NewShopFiles
                .Of(wanted, before, [hand.Workbench!.Workshop.Id])
                .Mistakes.Select(m => Known(WrittenMistake.At(m))),
        ];
    }

    /// <summary>Does it; null when done and this device knows nothing but the new shop, else why not.</summary>
    /// <exception cref="SecretWanted">A lead shows the passphrase once more before; nothing was done.</exception>
    public async Task<IReadOnlyList<string>?> Do(NewShop wanted)
    {
        await hand.Exchange.Rest(); // what this device has of the demo must not be sent to the new shop
        try
        {
            if (await shop.SetUp(new(Now().Ledger, wanted)) is { } refused)
            {
                hand.Exchange.GoOn();
                return refused.Split('\n');
            }
        }
        catch (SecretWanted)
        {
            hand.Exchange.GoOn();
            throw;
        }
        catch (ShopTrouble gone)
        {
            hand.Exchange.GoOn();
            return [gone.Message];
        }
        await NewShopAnswers();
        await store.Forget(wanted.Lead, (hand.Settings.Now with { GoesAlone = false }).Write());
        return null;
    }

    private WorkbenchReply Now() =>
        JsonSerializer.Deserialize(hand.Ledger.Facts.Workbench!, DeviceJson.Default.WorkbenchReply)!;

    /// <summary>Until the server has begun anew; one that takes long is met by the next page as any shop is.</summary>
    private async Task NewShopAnswers()
    {
        var (until, old) = (DateTime.UtcNow + Patience, Now().Ledger);
        while (DateTime.UtcNow < until)
        {
            await Task.Delay(Pause);
            if (await LedgerNow() is { } now && now != old)
                return;
        }
    }

    private async Task<string?> LedgerNow()
    {
        try
        {
            return await shop.Workbench(null) is var (text, _)
                ? JsonSerializer.Deserialize(text, DeviceJson.Default.WorkbenchReply)?.Ledger
                : null;
        }
        catch (ShopTrouble)
        {
            return null; // between the one and the other
        }
    }
}
