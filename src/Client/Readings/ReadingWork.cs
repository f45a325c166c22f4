using System.Globalization;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Client.Bench;
using Witnessmark.Client.Parts;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Readings;

/// <summary>What taps and keys do to a reading on its way. Each change is kept at once.</summary>
/// <param name="state">The point that is read.</param>
/// <param name="draft">The reading.</param>
/// <param name="keep">Called after each change.</param>
public sealed class ReadingWork(PointState state, ReadingDraft draft, Action keep)
{
    private const int VinSigns = 17;

    /// <summary>Something in the boxes changed: who shows them draws them anew.</summary>
    public event Action? Changed;

    public PointState State => state;

    public ReadingDraft Draft => draft;

    /// <summary>Why the last key did nothing; empty when it did.</summary>
    public string KeySaid { get; private set; } = "";

    /// <summary>Whether a level is typed in percent, rather than tapped on the drawn stick.</summary>
    public bool Percent { get; private set; }

    public string? UnitText => draft.Unit is { Symbol: not "1" } unit ? unit.Symbol : null;

    public void Press(char key)
    {
        if (draft.Letters)
            PressLetter(char.ToUpperInvariant(key));
        else
            Show(TypedNumber.Press(draft.Here.Text, key, draft.Rules));
    }

    public void Nudge(int way) => Show(TypedNumber.Nudged(draft.Here.Text, draft.Step!.Value, way, draft.Rules));

    public void Fill(string text) => Show(new(text));

    /// <summary>Takes over what the device told, into the box in hand; a box that is full is followed by another where there may be one.</summary>
    public void Tell(string text, DeviceReading told)
    {
        if (draft.Stands(draft.Here) && draft.Here.Told is not null && draft.CanRepeat)
            draft.Repeat();
        draft.Here.Tell(text, told);
        KeySaid = "";
        Kept();
    }

    public void Answer(Slot slot, string answer)
    {
        slot.Text = answer;
        Kept();
    }

    public void AllRight()
    {
        foreach (var slot in draft.Slots)
            slot.Text = "yes";
        Kept();
    }

    public void Take(int at)
    {
        (draft.At, KeySaid) = (at, "");
        Kept();
    }

    public void Repeat()
    {
        draft.Repeat();
        Kept();
    }

    /// <summary>The next box that is empty, when this one stands.</summary>
    public void Enter() => Take(draft.Stands(draft.Here) && draft.NextEmpty is { } next ? next : draft.At);

    public void TypePercent()
    {
        Percent = true;
        Kept();
    }

    public void Keep() => Kept();

    /// <summary>A value in the unit of what is typed; null when that measures something else.</summary>
    /// <remarks>Never more than was advised: rounded up it could overfill or overtighten.</remarks>
    public string? Typed(double value, string unit)
    {
        var known = UnitTable.Named(unit);
        return draft.Unit is { } own && own.Dimension == known.Dimension
            ? Floored(own.FromBase(known.ToBase(value))).ToString("0.##", CultureInfo.InvariantCulture)
            : null;
    }

    private void Kept()
    {
        keep();
        Changed?.Invoke();
    }

    private void PressLetter(char key)
    {
        var text = draft.Here.Text;
        Show(
            key == TypedNumber.Delete ? new(text.Length == 0 ? text : text[..^1])
            : key is 'I' or 'O' or 'Q' || !char.IsAsciiLetterOrDigit(key) ? new(text, PartsWords.NoSuchKey(key))
            : text.Length == VinSigns ? new(text, PartsWords.TooLong(VinSigns))
            : new(text + key)
        );
    }

    private void Show(Typed typed)
    {
        draft.Here.Text = typed.Text;
        KeySaid = typed.Said ?? "";
        Kept();
    }

    private static double Floored(double value) => Math.Floor(value * 100 + 1e-6) / 100;
}
