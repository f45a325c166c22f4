using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Client.Parts;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Bench;

/// <summary>A reading on its way: the boxes of its kind, which of them is typed into, and what it is read with.</summary>
public sealed class ReadingDraft
{
    private const int MostRepeats = 5;
    private readonly ReadingForm form;
    private readonly DateOnly day;

    // a frame without a VIN has a number of any length
    private readonly bool frame;

    /// <param name="point">What is read.</param>
    /// <param name="shop">With what it could be read.</param>
    /// <param name="day">What is out of calibration then is not offered where somebody's safety hangs on it.</param>
    /// <param name="machine">The machine, or null.</param>
    public ReadingDraft(Point point, Workshop shop, DateOnly day, Machine? machine = null)
    {
        frame = machine is { Vin: "" };
        Point = point;
        form = point.Reading;
        this.day = day;
        Slots = [.. SlotsOf(form)];
        var fitting = shop.Instruments.Values.Where(Fits).OrderBy(i => i.Name, StringComparer.Ordinal).ToLookup(Proves);
        Instruments = [.. fitting[true]];
        NotOffered = [.. fitting[false].Select(i => Calibration.Doubt(i, day)!)];
        Instrument =
            form.Instrument is { } usual && shop.Instruments.GetValueOrDefault(usual) is { } known && Proves(known)
                ? known
                : null;
        // one wrench that fits needs no choosing
        if (Instrument is null && Instruments.Count == 1)
            Instrument = Instruments[0];
    }

    public Point Point { get; }

    public List<Slot> Slots { get; }

    /// <summary>The box in hand.</summary>
    public int At { get; set; }

    public Slot Here => Slots[At];

    /// <summary>What this point could be read with in this shop.</summary>
    public IReadOnlyList<ShopInstrument> Instruments { get; }

    public ShopInstrument? Instrument { get; set; }

    /// <summary>Why some that would fit are not offered, a sentence for each.</summary>
    public IReadOnlyList<Sentence> NotOffered { get; }

    /// <summary>What is to be said of the calibration of the one that was chosen, or null.</summary>
    public Sentence? Undated => Point.Safety && Instrument is { } with ? Calibration.Doubt(with, day) : null;

    /// <summary>Unit of what is typed: it belongs to the instrument; a level is typed in percent.</summary>
    public Unit? Unit =>
        form.Kind == ReadingKind.Level ? UnitTable.Named("%")
        : form.Unit is { } unit && Instrument is { } with && with.Unit.Dimension == unit.Dimension ? with.Unit
        : form.Unit;

    public bool Typed => form.Kind is not (ReadingKind.Seen or ReadingKind.Done);

    public bool Letters => form.Kind == ReadingKind.Vin;

    /// <summary>Whether one more reading of the same, or of both sides, may be added.</summary>
    public bool CanRepeat =>
        form.Kind switch
        {
            ReadingKind.Sides => Slots.Count < 2 * MostRepeats,
            ReadingKind.Value => Slots.Count < MostRepeats && Point.Id != "distance",
            _ => false,
        };

    public bool Complete => Slots.All(s => Stands(s));

    /// <summary>The next box that is empty, or null.</summary>
    public int? NextEmpty =>
        Enumerable
            .Range(1, Slots.Count)
            .Select(i => (At + i) % Slots.Count)
            .Cast<int?>()
            .FirstOrDefault(i => !Stands(Slots[i!.Value]));

    public KeyRules Rules =>
        form.Kind switch
        {
            ReadingKind.Vin => new(0, "", false, 17, true),
            ReadingKind.TyreDate => new(0, BenchWords.DateCode, false, 4, true),
            ReadingKind.Level => new(0, BenchWords.Percent, form.PlausibleMin < 0, 3),
            // one digit more than the instrument is written with: people read between its lines
            _ => new(
                (Instrument?.Decimals ?? 2) + 1,
                Instrument?.Name ?? BenchWords.NoInstrument,
                form.PlausibleMin < 0
            ),
        };

    /// <summary>One step of the instrument; null where nudging makes no sense.</summary>
    public decimal? Step =>
        form.Kind is ReadingKind.Vin or ReadingKind.TyreDate ? null
        : form.Kind == ReadingKind.Level ? 5
        : Instrument is { Resolution: > 0 } with ? (decimal)with.Resolution
        : null;

    public string? StepText => Step is { } step ? Say($"{step:0.####} {Unit}") : null;

    public void Repeat()
    {
        Slots.AddRange(SlotsOf(form));
        Number();
        At = NextEmpty ?? At;
    }

    /// <summary>As it is recorded: the digits as typed, with their unit.</summary>
    public IReadOnlyList<string> Raw => [.. Slots.Select(RawOf)];

    public IReadOnlyList<string>? Places => Slots.All(s => s.Place is null) ? null : [.. Slots.Select(s => s.Place!)];

    /// <summary>The question to ask about a value that makes no sense here, with the box it stands in.</summary>
    public (int Slot, Doubt Doubt)? Doubt()
    {
        if (form.Unit is not { } unit)
            return null;
        if (form.Kind == ReadingKind.Marks)
            return ValueOf(0) is { } a && ValueOf(1) is { } b && TenTimes.About(form, Math.Abs(a - b)) is { } far
                ? (At, far with { Instead = null })
                : null;
        for (var i = 0; i < Slots.Count; i++)
            if (ValueOf(i) is { } value && TenTimes.About(form, value) is { } doubt)
                return (i, doubt);
        return null;

        double? ValueOf(int i) => RawValue.In(RawOf(Slots[i]), unit, out _);
    }

    /// <summary>Puts the value that was meant, given in the form's unit, into a box.</summary>
    public void Mean(int slot, double value)
    {
        var typed = new Written(value, form.Unit!).In(Unit!).Value;
        Slots[slot].Text = Math.Round(typed, 4).ToString("0.####", CultureInfo.InvariantCulture);
    }

    internal DraftText? Kept =>
        Slots.All(s => s.Text.Length == 0)
            ? null
            : new(
                [.. Slots.Select(s => s.Text)],
                At,
                Instrument?.Id,
                Slots.All(s => s.Told is null) ? null : [.. Slots.Select(s => ToldText.Of(s.Told))]
            );

    internal void Restore(DraftText kept)
    {
        while (Slots.Count < kept.Texts.Count && CanRepeat)
            Repeat();
        for (var i = 0; i < Math.Min(Slots.Count, kept.Texts.Count); i++)
        {
            Slots[i].Text = kept.Texts[i];
            if (ToldText.Read(kept.Told?.ElementAtOrDefault(i)) is { } told)
                Slots[i].Tell(kept.Texts[i], told);
        }
        At = Math.Clamp(kept.At, 0, Slots.Count - 1);
        Instrument = Instruments.FirstOrDefault(i => i.Id == kept.With) ?? Instrument;
    }

    /// <summary>
    /// With which sense the device took the reading, and the largest uncertainty of its values; null unless it told all of them with one
    /// sense: beside a typed value nothing says how far that one may be off but its instrument.
    /// </summary>
    public DeviceReading? Device =>
        Slots.All(s => s.Told is not null) && Slots.DistinctBy(s => s.Told!.Sense).Take(2).Count() == 1
            ? Slots.MaxBy(s => s.Told!.Uncertainty.Base)!.Told
            : null;

    public bool Stands(Slot slot) =>
        form.Kind switch
        {
            ReadingKind.Seen => slot.Text is "yes" or "no",
            ReadingKind.Vin => frame ? slot.Text.Length > 0 : slot.Text.Length == 17,
            ReadingKind.TyreDate => slot.Text.Length is 3 or 4,
            _ => TypedNumber.Stands(slot.Text),
        };

    private string RawOf(Slot slot) => Unit is { Symbol: not "1" } unit ? $"{slot.Text} {unit}" : slot.Text;

    private bool Proves(ShopInstrument instrument) => !Point.Safety || Calibration.Proves(instrument, day);

    private bool Fits(ShopInstrument instrument) =>
        form.Kind switch
        {
            ReadingKind.Tighten => instrument.Kind == "torque",
            ReadingKind.Level => instrument.Kind == "level",
            ReadingKind.Seen or ReadingKind.Done or ReadingKind.Vin or ReadingKind.TyreDate => false,
            _ => instrument.Kind == "measure" && instrument.Unit.Dimension == form.Unit?.Dimension,
        };

    private void Number()
    {
        for (var i = 0; i < Slots.Count; i++)
            Slots[i] = Slots[i] with { Label = $"{Slots[i].Label.Split(',')[0]}, {i / SlotsOf(form).Count() + 1}" };
    }

    private static IEnumerable<Slot> SlotsOf(ReadingForm form) =>
        form.Kind switch
        {
            ReadingKind.Marks => [new(BenchWords.LowestMark, null), new(BenchWords.HighestMark, null)],
            ReadingKind.Sides => [new(BenchWords.Left, "left"), new(BenchWords.Right, "right")],
            ReadingKind.Places or ReadingKind.TyreDate => form.Places.Select(p => new Slot(
                BenchWords.Capital(Known(p)),
                p
            )),
            ReadingKind.Seen => form.Places.Select(p => new Slot(BenchWords.Capital(Known(p)), null)),
            ReadingKind.Round => Enumerable
                .Range(1, form.Count)
                .Select(i => new Slot(BenchWords.RoundAt(i, form.Count), null)),
            ReadingKind.Done => [],
            _ => [new(BenchWords.OneLabel(form.Kind), null)],
        };
}
