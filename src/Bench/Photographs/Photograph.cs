using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Photographs;

/// <summary>A photograph of a job.</summary>
/// <param name="Entry">Who took it, and when.</param>
/// <param name="Point">The point it was taken at; empty for one of the machine.</param>
/// <param name="Figure">Key of the figure whose place in a document it shows, or null.</param>
/// <param name="Picture">The picture.</param>
/// <param name="Shows">In a few words.</param>
public sealed record Photograph(Entry Entry, string Point, string? Figure, Picture Picture, string Shows);
