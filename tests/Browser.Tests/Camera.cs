using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>An invented phone's camera: pictures larger than any that are kept, with the place where they were taken in them.</summary>
internal static class Camera
{
    public const string Place = "51.5N 0.1W";

    /// <summary>2400 × 1800 pixels: a page with a line of text, drawn by the browser.</summary>
    public static async Task<FilePayload> Picture(IPage page)
    {
        var drawn = await page.EvaluateAsync<string>(
            """
            () => {
              const canvas = document.createElement("canvas");
              [canvas.width, canvas.height] = [2400, 1800];
              const pen = canvas.getContext("2d");
              pen.fillStyle = "#eceae2";
              pen.fillRect(0, 0, 2400, 1800);
              pen.fillStyle = "#222";
              pen.font = "120px sans-serif";
              for (let line = 0; line < 9; line++) pen.fillText("Rear pads: lining at least 1.5 mm", 260, 300 + 160 * line);
              return canvas.toDataURL("image/jpeg", 0.9).split(",")[1];
            }
            """
        );
        var file = Convert.FromBase64String(drawn);
        // Exif 2.32, 4.5.2: a segment APP1 that begins with "Exif", right behind the start of the file
        byte[] place = [0xFF, 0xE1, 0, 18, .. "Exif\0\0"u8, .. System.Text.Encoding.ASCII.GetBytes(Place)];
        return new()
        {
            Name = "IMG_0001.jpg",
            MimeType = "image/jpeg",
            Buffer = [.. file[..2], .. place, .. file[2..]],
        };
    }
}
