using System.Diagnostics;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using ZXing;
using ZXing.Common;

namespace Witnessmark.Paper.Tests;

/// <summary>The code on the paper, scanned: drawn by poppler at 150 dots an inch, read by ZXing.</summary>
public sealed class PaperCodeScanTests
{
    private const int Pictures = 5;

    // each signature draws another code; of one in a hundred or two the reader makes nothing
    private const int Papers = 3;

    [Fact]
    public void The_signed_code_is_read_from_a_scan_of_150_dots_an_inch() =>
        Assert.Contains(Enumerable.Range(0, Papers), _ => ReadSigned(150) == 1);

    // no scanner puts the paper just so: at other resolutions every module lies otherwise on the grid of dots
    [Fact]
    public void However_the_paper_lies_on_the_grid_nearly_every_scan_is_read()
    {
        int[] resolutions = [147, 149, 151, 153, 157, 163, 171];
        // the reader makes nothing of 163
        Assert.Contains(Enumerable.Range(0, Papers), _ => ReadSigned(resolutions) >= resolutions.Length - 1);
    }

    /// <summary>How many scans of one signed paper are read. Each that is read says what is on the paper.</summary>
    private static int ReadSigned(params int[] resolutions)
    {
        var pdf = HandoverSheet.Pdf(FullJob.Released, Bench640.Workbench, FullJob.Day, null, TestSeals.Harrow);
        var logBook = LogBookFile.Write(FullJob.Released, Bench640.Workbench, TestSeals.Harrow);
        var read = resolutions.Select(r => Scanned(pdf, r)).OfType<string>().ToList();
        foreach (var text in read)
        {
            var jws = Jws.Read(text);
            Assert.True(TestSeals.Harrow.Key.Verifies(jws.Signed, jws.Signature));
            Assert.Null(PaperCode.Fault(text, logBook));
        }
        return read.Count;
    }

    [Fact]
    public void The_plain_code_is_read_as_well()
    {
        var text = Scanned(HandoverSheet.Pdf(FullJob.Released, Bench640.Workbench, FullJob.Day), 150);
        Assert.Null(PaperCode.Fault(text!, LogBookFile.Write(FullJob.Released, Bench640.Workbench)));
    }

    /// <summary>
    /// What a hand scanner reads, that takes picture after picture: each signature draws another code, and of one
    /// picture in a hundred or two the reader makes nothing, of the next one it does.
    /// </summary>
    internal static string? Scanned(byte[] pdf, params int[] dotsPerInch) =>
        dotsPerInch.Select(dots => ScannedAt(pdf, dots)).FirstOrDefault(text => text is not null);

    private static string? ScannedAt(byte[] pdf, int dotsPerInch)
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-scan-");
        try
        {
            var file = Path.Combine(folder.FullName, "sheet.pdf");
            File.WriteAllBytes(file, pdf);
            using var drawn = Process.Start(
                "pdftoppm",
                ["-r", $"{dotsPerInch}", "-gray", file, Path.Combine(folder.FullName, "page")]
            );
            drawn.WaitForExit();
            return folder
                .GetFiles("*.pgm")
                .OrderByDescending(f => f.Name)
                .SelectMany(f => Enumerable.Range(1, Pictures).Select(chance => Read(f.FullName, new(chance))))
                .FirstOrDefault(t => t is not null);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Reads a code from a grey picture, with the noise that a scanner adds.</summary>
    private static string? Read(string path, Random chance)
    {
        var (width, height, grey) = Pgm(File.ReadAllBytes(path));
        for (var i = 0; i < grey.Length; i++)
            grey[i] = (byte)Math.Clamp(grey[i] + chance.Next(-25, 26), 0, 255);
        var source = new RGBLuminanceSource(grey, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        var reader = new MultiFormatReader();
        // the strip of a sheet looks enough like a bar code to be taken for one
        var hints = new Dictionary<DecodeHintType, object>
        {
            [DecodeHintType.TRY_HARDER] = true,
            [DecodeHintType.POSSIBLE_FORMATS] = new[] { BarcodeFormat.QR_CODE },
        };
        return reader.decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
    }

    /// <summary>Netpbm, binary grey: <c>P5 width height 255</c> and the dots.</summary>
    private static (int Width, int Height, byte[] Grey) Pgm(byte[] file)
    {
        var head = System.Text.Encoding.ASCII.GetString(file[..40]).Split((char[])[' ', '\n'], 5);
        var start = head[0].Length + head[1].Length + head[2].Length + head[3].Length + 4;
        return (int.Parse(head[1]), int.Parse(head[2]), file[start..]);
    }
}
