using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Judging;

/// <summary>What a reading was taken with: an instrument of the shop, or the device itself.</summary>
internal static class TakenWith
{
    /// <summary>The instrument; null when none was named. With a reason when the one that was named is not known here.</summary>
    public static (ShopInstrument? Instrument, Sentence? Why) Of(ReadingFact reading, Workshop shop)
    {
        if (reading.Device is { } device)
            return (device.Instrument(shop.InstrumentsNeedDates), null);
        if (reading.Instrument is not { } id)
            return (null, null);
        return shop.Instruments.GetValueOrDefault(id) is { } known
            ? (known, null)
            : (null, $"the instrument \"{id}\" is not known here");
    }
}
