using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Bench.Judging;

/// <summary>What an instrument can tell, in the unit of the reading.</summary>
internal static class InstrumentIn
{
    /// <summary>Widths are converted without the offset of a scale.</summary>
    public static Instrument Unit(ShopInstrument instrument, Handbook.Quantities.Unit unit)
    {
        var factor = instrument.Unit.Factor / unit.Factor;
        return new(instrument.Resolution * factor, instrument.PermissibleError * factor);
    }
}
