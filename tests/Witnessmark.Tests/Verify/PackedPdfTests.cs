using System.Globalization;
using System.IO.Compression;
using System.Text;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Verify;

/// <summary>A PDF that is small on the disk and does not end when it is unpacked. ISO 32000-1, 7.3.8 streams, 7.4 filters, 7.11.4 embedded files; made by hand.</summary>
public sealed class PackedPdfTests : IDisposable
{
    private const int Hundred = 100 << 20;
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("a page", 1)]
    [InlineData("a page", 2)]
    [InlineData("the log book", 1)]
    public void It_is_refused_before_it_fills_the_memory(string where, int times)
    {
        var zeros = Packed(new byte[Hundred]);
        if (times == 2)
            zeros = Packed(zeros);
        var filter = times == 2 ? "[/FlateDecode /FlateDecode]" : "/FlateDecode";
        var small = Packed("BT ET"u8.ToArray());
        var ended = Verified(
            where == "a page" ? (zeros, filter) : (small, "/FlateDecode"),
            where == "a page" ? (Packed("{}"u8.ToArray()), "/FlateDecode") : (zeros, filter)
        );
        Assert.Equal(2, ended.ExitCode);
        Assert.Equal(
            "paper.pdf holds more than 64 MB when it is unpacked, which no paper of this program does.",
            ended.Errors.Trim()
        );
    }

    [Fact]
    public void One_of_the_same_form_that_is_no_larger_than_it_looks_is_read()
    {
        var ended = Verified((Packed("BT ET"u8.ToArray()), "/FlateDecode"), (Packed("[]"u8.ToArray()), "/FlateDecode"));
        Assert.DoesNotContain("unpacked", ended.Errors + ended.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("carries no log-book.json", ended.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_larger_than_any_log_book_is_not_read()
    {
        var path = Path.Combine(folder.Path, "large.json");
        using (var file = File.Create(path))
            file.SetLength((64 << 20) + 1);
        var ended = RealProgram.Run("", "verify", path);
        Assert.Equal(
            (2, "large.json has more than 64 MB, which no log book has."),
            (ended.ExitCode, ended.Errors.Trim())
        );
    }

    private RealProgram.Ended Verified((byte[] Bytes, string Filter) page, (byte[] Bytes, string Filter) logBook)
    {
        var path = Path.Combine(folder.Path, "paper.pdf");
        File.WriteAllBytes(path, Pdf(page, logBook));
        return RealProgram.Run("", "verify", path);
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var into = new ZLibStream(packed, CompressionLevel.Fastest))
            into.Write(bytes);
        return packed.ToArray();
    }

    private static byte[] Pdf((byte[] Bytes, string Filter) page, (byte[] Bytes, string Filter) logBook)
    {
        using var pdf = new MemoryStream();
        List<long> places = [];
        void Write(string text) => pdf.Write(Encoding.Latin1.GetBytes(text));
        void Object(string dictionary, byte[]? stream = null)
        {
            places.Add(pdf.Position);
            Write($"{places.Count} 0 obj\n{dictionary}\n");
            if (stream is not null)
            {
                Write("stream\n");
                pdf.Write(stream);
                Write("\nendstream\n");
            }
            Write("endobj\n");
        }
        Write("%PDF-1.7\n");
        Object("<< /Type /Catalog /Pages 2 0 R /Names << /EmbeddedFiles << /Names [(log-book.json) 5 0 R] >> >> >>");
        Object("<< /Type /Pages /Kids [3 0 R] /Count 1 >>");
        Object("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 200] /Resources << >> /Contents 4 0 R >>");
        Object($"<< /Length {page.Bytes.Length} /Filter {page.Filter} >>", page.Bytes);
        Object("<< /Type /Filespec /F (log-book.json) /UF (log-book.json) /EF << /F 6 0 R >> >>");
        Object($"<< /Type /EmbeddedFile /Length {logBook.Bytes.Length} /Filter {logBook.Filter} >>", logBook.Bytes);
        var table = pdf.Position;
        Write($"xref\n0 {places.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in places)
            Write(string.Create(CultureInfo.InvariantCulture, $"{place:0000000000} 00000 n \n"));
        Write($"trailer\n<< /Size {places.Count + 1} /Root 1 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return pdf.ToArray();
    }
}
