using BitMiracle.LibJpeg.Classic;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Benchmarks;

/// <summary>An invented job of the demo workshop with as many entries and photographs as are wanted.</summary>
internal static class BusyJob
{
    private const string Job = "412";
    private const int PictureWidth = 1600;
    private const int PictureHeight = 1200;

    public static Workbench Bench { get; } = Read();

    /// <summary>Every safety point read and noted in turn, and photographs at the end.</summary>
    public static JobState Of(int entries, IReadOnlyList<StoredPicture> pictures)
    {
        var machine = Bench.Workshop.Machines["fell-640-0412"];
        var plan = Bench.Book.Purposes["handover"];
        List<Entry> all = [];
        Write(
            EntryKind.Arrival,
            EntryBody.Arrival(machine.Id, machine.Sheet, Bench.Newest(machine.Sheet)!.Revision, "handover", plan)
        );
        string[] read = ["front-pads", "rear-pads", "tyre-front-tread", "tyre-rear-tread"];
        for (var n = 0; all.Count < entries - pictures.Count; n++)
            if (n % 3 == 0)
                Write(EntryKind.Note, EntryBody.Note(plan[n % plan.Count].Point, $"Looked at again, the {n}th time."));
            else
            {
                var point = Bench.Book.Points[read[n % read.Length]];
                string[] raw = [.. point.Reading.Places.Select(_ => "4.25 mm")];
                Write(
                    EntryKind.Reading,
                    EntryBody.Reading(point.Id, raw, point.Reading.Places, point.Reading.Instrument)
                );
            }
        foreach (var (number, picture) in pictures.Index())
            Write(
                EntryKind.Photograph,
                EntryBody.Photograph(
                    read[number % read.Length],
                    null,
                    picture.Picture,
                    $"what was seen, number {number}"
                )
            );
        return JobFold.Of(Job, all, Bench);

        void Write(string kind, System.Text.Json.JsonElement body)
        {
            var at = $"2026-11-25T09:{all.Count % 60:00}:00+00:00";
            var draft = new EntryDraft(
                $"e{all.Count + 1}",
                "harrow-lane",
                Job,
                kind,
                body,
                null,
                null,
                at,
                "Ines Tallow"
            );
            all.Add(Entries.Sealed(draft, "tablet", 1, all.Count + 1, all.LastOrDefault()?.Hash));
        }
    }

    /// <summary>Pictures as the bench takes them, 1600 × 1200, with as much in them as in a photograph of a workshop (about 400 kB).</summary>
    public static IReadOnlyList<StoredPicture> Pictures(int count) =>
        [.. Enumerable.Range(1, count).Select(seed => StoredPicture.Of(Picture(new(seed))).Certain)];

    private static byte[] Picture(Random chance)
    {
        using var file = new MemoryStream();
        var write = new jpeg_compress_struct();
        write.jpeg_stdio_dest(file);
        (write.Image_width, write.Image_height) = (PictureWidth, PictureHeight);
        (write.Input_components, write.In_color_space) = (3, J_COLOR_SPACE.JCS_RGB);
        write.jpeg_set_defaults();
        write.jpeg_set_quality(80, true);
        write.jpeg_start_compress(true);
        byte[][] row = [new byte[3 * PictureWidth]];
        var (tilt, grain) = (chance.NextDouble() * 0.02, 26);
        for (var y = 0; y < PictureHeight; y++)
        {
            for (var x = 0; x < PictureWidth; x++)
            {
                var light =
                    120 + 60 * Math.Sin(x * 0.01 + y * tilt) + 40 * Math.Sin(x * y * 0.0001) + chance.Next(grain);
                for (var c = 0; c < 3; c++)
                    row[0][3 * x + c] = (byte)Math.Clamp(light - 12 * c, 0, 255);
            }
            write.jpeg_write_scanlines(row, 1);
        }
        write.jpeg_finish_compress();
        return file.ToArray();
    }

    private static Workbench Read()
    {
        var program = AppContext.BaseDirectory;
        var files = In("book", "book").Concat(In("demo/sheets", "sheets")).Append(Text("demo/shop.toml", "shop.toml"));
        var (bench, mistakes) = WorkbenchFiles.Read([.. files]);
        return bench ?? throw new InvalidOperationException(string.Join("\n", mistakes));

        IEnumerable<SourceText> In(string folder, string name) =>
            Directory
                .GetFiles(Path.Combine(program, folder), "*.toml")
                .Select(f => Text(Path.GetRelativePath(program, f), $"{name}/{Path.GetFileName(f)}"));

        SourceText Text(string path, string name) => new(name, File.ReadAllText(Path.Combine(program, path)));
    }
}
