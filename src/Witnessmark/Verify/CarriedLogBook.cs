using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace Witnessmark.Verify;

/// <summary>The log book in a file: the file itself, or what a handover sheet carries inside.</summary>
internal static class CarriedLogBook
{
    // a sheet with its log book is some hundred kilobytes
    private const long MostUnpacked = 64 << 20;
    private const long MostOfFile = 64 << 20;

    /// <summary>The log book's text, and the visible text where it is a PDF.</summary>
    /// <exception cref="FormatException">A PDF without a log book, or a broken one.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    public static (string LogBook, string? Sheet) Read(FileInfo file)
    {
        if (file.Exists && file.Length > MostOfFile)
            throw new FormatException($"{file.Name} has more than {MostOfFile >> 20} MB, which no log book has.");
        var bytes = File.ReadAllBytes(file.FullName);
        return bytes.AsSpan().StartsWith("%PDF-"u8) ? InPdf(bytes, file.Name) : (Encoding.UTF8.GetString(bytes), null);
    }

    private static (string, string) InPdf(byte[] bytes, string name)
    {
        var filters = new BoundedFilters(MostUnpacked);
        try
        {
            using var pdf = PdfDocument.Open(bytes, new() { FilterProvider = filters });
            if (
                !pdf.Advanced.TryGetEmbeddedFiles(out var files)
                || files.FirstOrDefault(f => f.Name == "log-book.json") is not { } inside
            )
                throw new FormatException($"{name} carries no log-book.json inside.");
            var letters = pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.Value);
            return (Encoding.UTF8.GetString(inside.Memory.Span), string.Concat(letters));
        }
        catch (Exception) when (filters.AreOver)
        {
            throw new FormatException(
                $"{name} holds more than {MostUnpacked >> 20} MB when it is unpacked, which no paper of this program does."
            );
        }
        catch (PdfDocumentFormatException broken)
        {
            throw new FormatException($"{name} is a broken PDF: {broken.Message}", broken);
        }
    }
}
