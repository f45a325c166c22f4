using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.Record;
using Witnessmark.Photographs;

namespace Witnessmark.Benchmarks;

/// <summary>
/// The handover sheet of a job with 300 entries and 12 photographs: allowed are 1 s and 3 MB. Beside it PDFsharp alone, which puts the same
/// twelve pictures on pages as they are stored, and nothing else.
/// </summary>
internal static class SheetTimes
{
    private const int EntriesOfJob = 300;
    private const int Photographs = 12;
    private const int Rounds = 9;
    private static readonly DateOnly Day = new(2026, 11, 25);

    public static void Print()
    {
        var pictures = BusyJob.Pictures(Photographs);
        var job = BusyJob.Of(EntriesOfJob, pictures);
        var stored = pictures.ToDictionary(p => p.Picture.Sha256, p => p.Bytes);
        Console.WriteLine(
            $"{job.Entries.Count} entries, {job.Photographs.Count} photographs of {pictures.Average(p => p.Bytes.Length) / 1000:0} kB"
        );
        Console.WriteLine($"{"", -34} first ms  least ms  median ms      MB   of 1 s  of 3 MB");
        var alone = Line("PDFsharp alone, pictures as stored", () => Alone(pictures));
        var sheet = Line("handover sheet", () => Sheet(job, stored));
        Line("record (HTML)", () => System.Text.Encoding.UTF8.GetBytes(Record(job, stored)));
        Console.WriteLine($"sheet / PDFsharp alone: {sheet / alone:0.0} times");
    }

    private static byte[] Sheet(JobState job, Dictionary<string, byte[]> stored) =>
        HandoverSheet.Pdf(job, BusyJob.Bench, Day, pictures: hash => SmallPicture.Of(stored[hash]));

    private static string Record(JobState job, Dictionary<string, byte[]> stored) =>
        RecordPage.Html(job, BusyJob.Bench, Day, pictures: hash => SmallPicture.Of(stored[hash]));

    private static byte[] Alone(IReadOnlyList<StoredPicture> pictures)
    {
        using var document = new PdfDocument();
        foreach (var picture in pictures)
        {
            using var canvas = XGraphics.FromPdfPage(document.AddPage());
            using var image = XImage.FromStream(new MemoryStream(picture.Bytes));
            canvas.DrawImage(image, 40, 40, 148, 111);
        }
        using var file = new MemoryStream();
        document.Save(file);
        return file.ToArray();
    }

    private static double Line(string name, Func<byte[]> made)
    {
        List<double> times = [];
        var bytes = 0;
        for (var round = 0; round <= Rounds; round++)
        {
            var from = System.Diagnostics.Stopwatch.GetTimestamp();
            bytes = made().Length;
            times.Add(System.Diagnostics.Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }
        var rest = times.Skip(1).Order().ToArray();
        var median = rest[rest.Length / 2];
        Console.WriteLine(
            $"{name, -34} {times[0], 8:0} {rest[0], 9:0} {median, 10:0} {bytes / 1e6, 7:0.00} {times[0] / 1000, 8:0.00} {bytes / 3e6, 8:0.00}"
        );
        return median;
    }
}
