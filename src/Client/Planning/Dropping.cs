using Witnessmark.Bench.Book;

namespace Witnessmark.Client.Planning;

/// <summary>A point that is to be taken out of a plan.</summary>
/// <param name="Point">The point.</param>
/// <param name="Why">The reason.</param>
/// <param name="Lead">Who stands for it where somebody's safety hangs on it; null: on nobody's.</param>
/// <param name="Word">What the shop gave for that lead's word; null where nobody has to show anything.</param>
public sealed record Dropping(Point Point, string Why, string? Lead = null, string? Word = null);
