using System.Text;
using QRCoder;

namespace Witnessmark.Certificates;

/// <summary>An address as a QR code (ISO/IEC 18004) that a page can hold: dark on white by day and by night, as cameras need it.</summary>
internal static class TrustCode
{
    /// <param name="address">What it says.</param>
    /// <param name="label">What it is, as it stands in the markup.</param>
    public static string Svg(string address, string label)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var rows = code.ModuleMatrix;
        var dark = new StringBuilder();
        for (var y = 0; y < rows.Count; y++)
        for (var x = 0; x < rows.Count; x++)
            if (rows[y][x])
                dark.Append(System.Globalization.CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
        return $"""<svg class="code" viewBox="0 0 {rows.Count} {rows.Count}" role="img" aria-label="{label}" shape-rendering="crispEdges"><path d="{dark}"/></svg>""";
    }
}
