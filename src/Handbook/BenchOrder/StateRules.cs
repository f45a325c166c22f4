using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>The states of one order by number: what a change costs, when it is possible, and what a need drags with it.</summary>
internal sealed class StateRules
{
    private readonly IReadOnlyList<BenchState> states;
    private readonly StateNeed[] requires;
    private readonly uint[] holdOn;
    private readonly uint[] holdOff;

    public StateRules(IReadOnlyList<BenchState> states)
    {
        this.states = states;
        var number = states.Select((s, i) => (s.Name, i)).ToDictionary(p => p.Name, p => p.i, StringComparer.Ordinal);
        requires = [.. states.Select(s => Need(s.Requires, number))];
        holdOn = [.. states.Select((_, s) => Holders(r => r.On, s))];
        holdOff = [.. states.Select((_, s) => Holders(r => r.Off, s))];
        Number = number;
        Set = [.. states.Select(s => s.Set.Seconds)];
        Clear = [.. states.Select(s => s.Clear?.Seconds ?? 0)];
        Cool = [.. states.Select(s => s.ClearAfter?.Seconds ?? 0)];
        Initial = Bits(s => s.Initial);
        Timed = Bits(s => s.ClearAfter is not null);
        OneWay = Bits(s => !s.Clearable);
        Final = Widened(new StateNeed(Bits(s => s.Final == true), Bits(s => s.Final == false)));
    }

    public int Count => states.Count;

    public IReadOnlyDictionary<string, int> Number { get; }

    /// <summary>Hands-on seconds 0 to 1.</summary>
    public double[] Set { get; }

    /// <summary>Hands-on seconds 1 to 0.</summary>
    public double[] Clear { get; }

    /// <summary>Unattended seconds before 1 may become 0.</summary>
    public double[] Cool { get; }

    public uint Initial { get; }

    /// <summary>Those with a time to wait before they are cleared.</summary>
    public uint Timed { get; }

    /// <summary>Those that can never be cleared.</summary>
    public uint OneWay { get; }

    /// <summary>How the machine must end, with all that this drags with it.</summary>
    public StateNeed Final { get; }

    public string Name(int state) => states[state].Name;

    public StateNeed Need(IReadOnlyDictionary<string, bool> values) => Need(values, Number);

    /// <summary>Whether nothing that is so now lacks what it requires.</summary>
    public bool Consistent(uint state)
    {
        for (var s = 0; s < Count; s++)
            if ((state >> s & 1) != 0 && !requires[s].MetBy(state))
                return false;
        return true;
    }

    /// <summary>Whether this one state may change now, the clock apart.</summary>
    public bool MayChange(int s, uint state) =>
        (state >> s & 1) == 0
            ? requires[s].MetBy(state) && (holdOff[s] & state) == 0
            : (OneWay >> s & 1) == 0 && (holdOn[s] & state) == 0;

    /// <summary>Hands-on seconds to change this state from how it is.</summary>
    public double Hands(int s, uint state) => (state >> s & 1) == 0 ? Set[s] : Clear[s];

    /// <summary>Hands-on seconds of several changes.</summary>
    public double Hands(uint changes, uint state)
    {
        var sum = 0.0;
        for (; changes != 0; changes &= changes - 1)
            sum += Hands(BitOperations.TrailingZeroCount(changes), state);
        return sum;
    }

    /// <summary>
    /// A need with all that it drags with it: what a needed state requires is needed too, and a state that requires
    /// the opposite of a need must be off.
    /// </summary>
    public StateNeed Widened(StateNeed need)
    {
        for (var before = default(StateNeed); before != need; )
        {
            before = need;
            for (var s = 0; s < Count; s++)
            {
                if ((need.On >> s & 1) != 0)
                    need = need.And(requires[s]) with { Off = need.Off | requires[s].Off | holdOff[s] };
                if ((need.Off >> s & 1) != 0)
                    need = need with { Off = need.Off | holdOn[s] };
            }
        }
        return need;
    }

    /// <summary>A state that directly or through others requires itself, or -1: such a ring can never be closed or opened.</summary>
    public int InRing()
    {
        for (var s = 0; s < Count; s++)
        {
            var reached = requires[s].On;
            for (var before = 0u; before != reached; )
            {
                before = reached;
                for (var t = 0; t < Count; t++)
                    if ((before >> t & 1) != 0)
                        reached |= requires[t].On;
            }
            if ((reached >> s & 1) != 0)
                return s;
        }
        return -1;
    }

    private uint Holders(Func<StateNeed, uint> side, int s)
    {
        var holders = 0u;
        for (var x = 0; x < requires.Length; x++)
            if (x != s && (side(requires[x]) >> s & 1) != 0)
                holders |= 1u << x;
        return holders;
    }

    private uint Bits(Func<BenchState, bool> which)
    {
        var bits = 0u;
        for (var s = 0; s < states.Count; s++)
            if (which(states[s]))
                bits |= 1u << s;
        return bits;
    }

    private static StateNeed Need(IReadOnlyDictionary<string, bool> values, IReadOnlyDictionary<string, int> number)
    {
        var need = default(StateNeed);
        foreach (var (name, on) in values)
            need = number.TryGetValue(name, out var s)
                ? need.And(s, on)
                : throw new ArgumentException("There is no state \"{name}\".", nameof(values));
        return need;
    }
}
