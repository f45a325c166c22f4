using System.Buffers.Binary;

namespace Witnessmark.Bench.Tests.Photographs;

/// <summary>JPEG files put together from their parts, after ITU-T T.81 annex B. Nothing decodes them; only their parts matter.</summary>
internal static class Jpegs
{
    public static readonly byte[] Jfif = Segment(0xE0, [.. "JFIF\0"u8, 1, 2, 0, 0, 1, 0, 1, 0, 0]);
    public static readonly byte[] Tables = [.. Segment(0xDB, new byte[65]), .. Segment(0xC4, new byte[20])];
    public static readonly byte[] Scan =
    [
        .. Segment(0xDA, [1, 1, 0, 0, 63, 0]),
        0x12,
        0xFF,
        0x00,
        0x34,
        0xFF,
        0xD0,
        0x56, // a stuffed FF and a restart within
    ];
    public static readonly byte[] Place = Segment(0xE1, [.. "Exif\0\0"u8, .. "51.5N 0.1W"u8]);

    public static byte[] Plain(int width = 800, int height = 600) => Of(Jfif, Tables, Frame(width, height), Scan);

    public static byte[] Of(params byte[][] parts) => [0xFF, 0xD8, .. parts.SelectMany(p => p), 0xFF, 0xD9];

    public static byte[] Frame(int width, int height, byte marker = 0xC0, byte components = 3)
    {
        var body = new byte[6 + 3 * components];
        body[0] = 8;
        BinaryPrimitives.WriteUInt16BigEndian(body.AsSpan(1), (ushort)height);
        BinaryPrimitives.WriteUInt16BigEndian(body.AsSpan(3), (ushort)width);
        body[5] = components;
        return Segment(marker, body);
    }

    public static byte[] Segment(byte marker, byte[] body)
    {
        var segment = new byte[body.Length + 4];
        (segment[0], segment[1]) = (0xFF, marker);
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(body.Length + 2));
        body.CopyTo(segment, 4);
        return segment;
    }
}
