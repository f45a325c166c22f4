using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>A bench book read by itself, without a workshop and its sheets.</summary>
/// <param name="Book">The book; null when there are mistakes.</param>
/// <param name="Overridden">What later layers say otherwise.</param>
/// <param name="Mistakes">All of them, by file and line.</param>
public sealed record BookRead(BenchBook? Book, IReadOnlyList<Overridden> Overridden, IReadOnlyList<Mistake> Mistakes);

/// <summary>Reads a bench book from its layers: the one that comes with the program, then each shop's own.</summary>
public static class BookFiles
{
    /// <summary>The book, or every mistake in it.</summary>
    public static BookRead Read(IEnumerable<IEnumerable<SourceText>> layers)
    {
        var mistakes = new Mistakes();
        var book = new BenchBookFile();
        var torn = false;
        foreach (var (layer, sources) in layers.Index())
        foreach (var source in sources.OrderBy(s => s.Name, StringComparer.Ordinal))
        {
            var file = TomlFile.Read(source, mistakes);
            torn |= file.Torn;
            if (!file.Torn)
                book.Take(file, layer);
        }
        if (!torn) // what a torn file would have named must not be called unknown
            BookReferences.Check(book, mistakes);
        return new(mistakes.Count > 0 ? null : book.Book, book.Overridden, mistakes.Sorted());
    }
}
