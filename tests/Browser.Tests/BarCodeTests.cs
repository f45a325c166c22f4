using System.Text;
using Microsoft.Playwright;
using ZXing;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// Our own reader of bar codes against codes drawn by a library (ZXing.Net), as a row of brightness and through the camera. The VIN is the
/// sample of 49 CFR 565.15.
/// </summary>
public sealed class BarCodeTests(Published published, Chromium chromium)
{
    private const string Vin = "1G4AH59H45G118341";

    [Fact]
    public async Task Codes_of_a_library_are_read_in_both_directions_small_blurred_and_in_uneven_light()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var page = (await device.Open(shop)).Page;
        foreach (var (text, format) in Codes())
        foreach (var (scale, blur) in new[] { (2, 0), (3, 1), (5, 2) })
        {
            var row = Light(Row(text, format, scale), blur);
            Assert.Equal(text, await Read(page, row));
            row.Reverse();
            Assert.Equal(text, await Read(page, row));
        }
    }

    [Fact]
    public async Task Noise_and_torn_codes_are_no_code()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var page = (await device.Open(shop)).Page;
        var chance = new Random(1);
        for (var i = 0; i < 300; i++)
        {
            var bars = new List<double>();
            while (bars.Count < 600)
                bars.AddRange(Enumerable.Repeat(bars.Count % 2 == 0 ? 20.0 : 220.0, chance.Next(1, 9)));
            Assert.Null(await Read(page, bars));
        }
        // a bar of the check sign gone, or the end cut off
        foreach (var format in new[] { BarcodeFormat.CODE_39, BarcodeFormat.CODE_128 })
            Assert.Null(await Read(page, Row(Vin, format, 3)[..^80]));
        // Code 128 carries a check sign: one module changed anywhere inside is never read as another text
        var whole = Row(Vin, BarcodeFormat.CODE_128, 3);
        for (var at = 60; at < whole.Count - 60; at += 3)
        {
            List<double> torn = [.. whole];
            for (var i = at; i < at + 3; i++)
                torn[i] = 255 - torn[i];
            Assert.True(await Read(page, torn) is null or Vin);
        }
    }

    [Fact]
    public async Task The_camera_offers_what_it_sees_and_nothing_is_taken_without_a_tap()
    {
        var film = Path.Combine(Path.GetTempPath(), $"witnessmark-{Guid.NewGuid():N}.y4m");
        await File.WriteAllBytesAsync(film, Film($"I{Vin}"), TestContext.Current.CancellationToken);
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(camera: film);
        var hand = await device.Open(shop);
        await hand.Open("machines");
        await hand.Page.Locator("#camera").ClickAsync();
        await hand.Sees($"Seen: {Vin}.");
        await hand.Sees("its check digit fits");
        Assert.Equal("", await hand.Page.Locator("#find").InputValueAsync());
        await hand.Page.Locator("#take").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#find")).ToHaveValueAsync(Vin);
        await Assertions.Expect(hand.Page.Locator("video")).ToHaveCountAsync(0);
        File.Delete(film);
    }

    private static IEnumerable<(string, BarcodeFormat)> Codes()
    {
        yield return (Vin, BarcodeFormat.CODE_39);
        yield return (Vin, BarcodeFormat.CODE_128);
        yield return ("0123456789", BarcodeFormat.CODE_39);
        yield return ("ABCDEFGHIJKLM", BarcodeFormat.CODE_39);
        yield return ("NOPQRSTUVWXYZ-. $", BarcodeFormat.CODE_39);
        yield return ("0123456789", BarcodeFormat.CODE_128); // code set C
        yield return ("HL-412 Fell a{~}z", BarcodeFormat.CODE_128); // code set B
        yield return ("AB12345678CD", BarcodeFormat.CODE_128); // changes in between
    }

    private static List<double> Row(string text, BarcodeFormat format, int scale)
    {
        var bits = new MultiFormatWriter().encode(text, format, 0, 1, new Dictionary<EncodeHintType, object>());
        var quiet = Enumerable.Repeat(255.0, 12 * scale);
        return
        [
            .. quiet,
            .. Enumerable.Range(0, bits.Width).SelectMany(x => Enumerable.Repeat(bits[x, 0] ? 0.0 : 255.0, scale)),
            .. quiet,
        ];
    }

    /// <summary>As a camera sees it: grey instead of black and white, blurred, darker to one side.</summary>
    private static List<double> Light(List<double> row, int blur) =>
        [
            .. Enumerable
                .Range(0, row.Count)
                .Select(i =>
                {
                    var near = row.Skip(Math.Max(0, i - blur)).Take(2 * blur + 1).Average();
                    return (40 + near * 0.6) * (1 - 0.4 * i / row.Count);
                }),
        ];

    private static async Task<string?> Read(IPage page, List<double> row) =>
        await page.EvaluateAsync<string?>("async row => (await import('/barcode.js')).readRow(row)", row.ToArray());

    /// <summary>One picture of 640 × 480 with the code across it: YUV4MPEG2, 4:2:0.</summary>
    private static byte[] Film(string text)
    {
        const int width = 640;
        const int height = 480;
        var row = Row(text, BarcodeFormat.CODE_39, 2);
        Assert.InRange(row.Count, 1, width);
        List<double> whole =
        [
            .. Enumerable.Repeat(255.0, (width - row.Count) / 2),
            .. row,
            .. Enumerable.Repeat(255.0, width - row.Count - (width - row.Count) / 2),
        ];
        var light = whole.Select(v => (byte)(16 + v * 0.85)).ToArray();
        using var film = new MemoryStream();
        film.Write(Encoding.ASCII.GetBytes($"YUV4MPEG2 W{width} H{height} F10:1 Ip A1:1 C420\n"));
        for (var picture = 0; picture < 3; picture++)
        {
            film.Write("FRAME\n"u8);
            for (var y = 0; y < height; y++)
                film.Write(light);
            film.Write(Enumerable.Repeat((byte)128, width * height / 2).ToArray());
        }
        return film.ToArray();
    }
}
