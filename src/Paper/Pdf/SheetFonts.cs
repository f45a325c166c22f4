using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Witnessmark.Paper.Pdf;

/// <summary>The fonts of the sheet, from this assembly: the paper looks the same on every machine.</summary>
internal sealed class SheetFonts : IFontResolver
{
    private const string Family = "Atkinson Hyperlegible Next";
    internal const string Regular = "AtkinsonHyperlegibleNext-Regular";
    private const string Bold = "AtkinsonHyperlegibleNext-Bold";

    // PDFsharp knows one resolver for the whole process.
    static SheetFonts() => GlobalFontSettings.FontResolver = new SheetFonts();

    /// <summary>A font whose text can be selected and copied.</summary>
    public static XFont Of(double size, bool bold) =>
        new(
            Family,
            size,
            bold ? XFontStyleEx.Bold : XFontStyleEx.Regular,
            new XPdfFontOptions(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset)
        );

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        familyName == Family ? new(isBold ? Bold : Regular) : null;

    public byte[] GetFont(string faceName) => Bytes(faceName);

    /// <summary>A font's file.</summary>
    internal static byte[] Bytes(string faceName)
    {
        using var resource =
            typeof(SheetFonts).Assembly.GetManifestResourceStream($"{faceName}.ttf")
            ?? throw new InvalidOperationException(
                $"The font {faceName} was trimmed away (Witnessmark.Paper.Pdf is off)."
            );
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return bytes;
    }
}
