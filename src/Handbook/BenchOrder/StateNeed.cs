namespace Witnessmark.Handbook.BenchOrder;

/// <summary>Which states must be so and which must not, as bits by number.</summary>
internal readonly record struct StateNeed(uint On, uint Off)
{
    public bool Contradicts => (On & Off) != 0;

    public bool MetBy(uint state) => (state & On) == On && (state & Off) == 0;

    /// <summary>Which states would have to change.</summary>
    public uint Changes(uint state) => (On & ~state) | (Off & state);

    public StateNeed And(StateNeed other) => new(On | other.On, Off | other.Off);

    public StateNeed And(int state, bool on) =>
        on ? this with { On = On | (1u << state) } : this with { Off = Off | (1u << state) };
}
