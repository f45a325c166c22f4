using System.Text;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Witnessmark.Paper.Pdf;

/// <summary>A file that travels inside the PDF and belongs to it.</summary>
/// <remarks><b>Source.</b> ISO 19005-3:2012, 6.8 and annex E: <c>/AF</c> of the document, <c>/AFRelationship /Source</c>, media type,
/// and the name in both forms; ISO 32000-1:2008, 7.11.4: day and size.</remarks>
internal static class AttachedFile
{
    public static void Add(PdfDocument document, string name, string json, string says, DateOnly day)
    {
        var bytes = Encoding.UTF8.GetBytes(json);
        using var stream = new MemoryStream(bytes);
        document.AddEmbeddedFile(name, stream);
        var all = document.Internals.GetAllObjects();
        var content = all.OfType<PdfEmbeddedFileStream>().Single();
        content.Elements.SetName("/Subtype", "/application/json");
        var facts = new PdfDictionary(document);
        facts.Elements.SetInteger("/Size", bytes.Length);
        facts.Elements.SetString("/ModDate", PdfDay.Of(day));
        content.Elements["/Params"] = facts;
        var specification = all.OfType<PdfFileSpecification>().Single();
        specification.Elements.SetString("/UF", name);
        specification.Elements.SetString("/Desc", says);
        specification.Elements.SetName("/AFRelationship", "/Source");
        var associated = new PdfArray(document);
        associated.Elements.Add(PdfInternals.GetReference(specification)!);
        document.Internals.Catalog.Elements["/AF"] = associated;
    }
}
