namespace Witnessmark.Bench.Kit;

/// <summary>What a line of the kit is.</summary>
public enum KitKind
{
    /// <summary>A part, a fluid, anything that is used up.</summary>
    Consumable,

    /// <summary>A torque wrench or an adapter.</summary>
    Tool,

    /// <summary>What a reading is taken with.</summary>
    Instrument,
}

/// <summary>One thing to lay ready.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Item">Its name.</param>
/// <param name="Quantity">How much: <c>2</c>, <c>3.41 L</c>, or <c>unknown</c>; never zero.</param>
/// <param name="For">Ids of the points that need it, in their order.</param>
/// <param name="Note">What else is to be known: which bottles, the setting, why not the usual one; empty when nothing.</param>
public sealed record KitLine(KitKind Kind, Sentence Item, Sentence Quantity, IReadOnlyList<string> For, Sentence Note)
{
    /// <summary>What stands where nobody knows how much.</summary>
    public const string Unknown = "unknown";
}

/// <summary>What the shop has too little of, or nothing that will do.</summary>
/// <param name="Item">Its name.</param>
/// <param name="Needed">How much is needed.</param>
/// <param name="There">How much can be had.</param>
/// <param name="For">Ids of the points that wait for it.</param>
/// <param name="LeadDays">Days from order to shelf, or null when nobody said.</param>
/// <param name="Why">In a sentence, with what to do.</param>
public sealed record Shortage(
    Sentence Item,
    Sentence Needed,
    Sentence There,
    IReadOnlyList<string> For,
    int? LeadDays,
    Sentence Why
);
