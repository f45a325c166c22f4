namespace Witnessmark.Bench.Planning;

/// <summary>What asks for a point, the strongest first: in this order several whys stand on one line.</summary>
public enum Because
{
    /// <summary>An open campaign.</summary>
    Campaign,

    /// <summary>Read outside, in this visit or the last.</summary>
    Outside,

    /// <summary>Read, but the instrument could not tell.</summary>
    Unproven,

    /// <summary>Left as it was, dropped or noted at the last visit.</summary>
    Finding,

    /// <summary>The wear forecast reaches the limit before the next visit.</summary>
    Wear,

    /// <summary>Its day or its distance has passed.</summary>
    Overdue,

    /// <summary>Due now, or never done on record.</summary>
    Due,

    /// <summary>Read inside, but close to the limit.</summary>
    Close,

    /// <summary>Due within the month.</summary>
    Soon,

    /// <summary>Work at another point breaks what was read here.</summary>
    Necessary,

    /// <summary>Always a part of this kind of visit.</summary>
    Purpose,
}

/// <summary>One why, in a sentence.</summary>
public sealed record Reason(Because Because, Sentence Sentence);

/// <summary>One line of a plan: a point and everything that asks for it, the strongest first.</summary>
public sealed record PlanLine(Book.Point Point, IReadOnlyList<Reason> Reasons)
{
    /// <summary>The whys as they are shown and recorded, one sentence after the other.</summary>
    public Sentence Why => Sentence.List(Reasons.Select(r => r.Sentence), " ");
}
