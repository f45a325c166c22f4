using System.Globalization;
using PdfSharp.Pdf;

namespace Witnessmark.Paper.Pdf;

/// <summary>A file for the archive (PDF/A-3): what it says of itself, and its bytes, the same for the same content and day.</summary>
internal static class PdfFile
{
    /// <summary>An empty file with its title, author and day.</summary>
    public static PdfDocument New(Sentence title, string author, DateOnly day, Tongue tongue)
    {
        var document = new PdfDocument();
        document.SetPdfA();
        var midnight = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Language = tongue.Code;
        document.Info.Title = title.In(tongue);
        document.Info.Author = author;
        document.Info.Creator = "Witnessmark";
        document.Info.CreationDate = midnight;
        document.Info.ModificationDate = midnight;
        document.ViewerPreferences.DisplayDocTitle = true;
        return document;
    }

    /// <summary>Its bytes.</summary>
    public static byte[] Saved(PdfDocument document, DateOnly day)
    {
        // Both ids of a file that was never revised are the same; here they say what it is, not when it was made.
        var id = day.ToString("'witnessmark-'yyyy", CultureInfo.InvariantCulture);
        document.Internals.FirstDocumentID = id;
        document.Internals.SecondDocumentID = id;
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        using var stream = new MemoryStream();
        document.Save(stream, false);
        return ArchiveFile.Of(stream.ToArray(), day);
    }
}
