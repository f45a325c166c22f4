using System.Buffers.Binary;
using Witnessmark.Handbook;

namespace Witnessmark.Bench.Photographs;

/// <summary>A JPEG file without anything that is not the picture: no place, no time, no owner, no thumbnail, nothing behind its end.</summary>
/// <remarks>
/// <para><b>Formula.</b> Own derivation: the file is walked marker by marker; tables, frame and scans are taken over byte for
/// byte, of the application segments only a JFIF header without a thumbnail, of the comments none.</para>
/// <para><b>Source.</b> ITU-T T.81 (09/1992): B.1.1.3 and table B.1 (markers), B.1.1.4 (segments), B.1.1.5 (stuffed bytes in
/// scans), B.2.2 (frame header); JFIF 1.02 (1992), p. 5 (its header).</para>
/// <para><b>Valid when</b> the picture is coded by Huffman's tables, sequential or progressive, in grey or in three components:
/// what cameras and browsers write. What lies inside of the scans is not decoded.</para>
/// </remarks>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Plain">The file without what is not the picture.</param>
/// <param name="WasPlain">Whether it was so already.</param>
public sealed record JpegFile(int Width, int Height, byte[] Plain, bool WasPlain)
{
    /// <summary>Reads a file.</summary>
    /// <param name="file">All its bytes, of any length.</param>
    /// <returns>Refused (<c>not-a-jpeg</c>, <c>torn</c>, <c>unusual-jpeg</c>) with what is wrong.</returns>
    public static Answer<JpegFile> Read(byte[] file)
    {
        if (file is not [0xFF, Marker.Start, ..])
            return Answer<JpegFile>.Refuse("not-a-jpeg", $"This is not a JPEG picture: it does not begin like one.");
        var walk = new JpegWalk(file);
        return walk.ToTheEnd() is { } refusal
            ? Answer<JpegFile>.Refuse(refusal.Key, refusal.Because)
            : new JpegFile(walk.Width, walk.Height, walk.Plain, walk.Plain.Length == file.Length);
    }

    /// <summary>Second bytes of the markers that matter.</summary>
    private static class Marker
    {
        public const byte Start = 0xD8;
        public const byte End = 0xD9;
        public const byte Scan = 0xDA;
        public const byte Header = 0xE0;
        public const byte Comment = 0xFE;

        public static bool IsApplications(byte marker) => marker is >= Header and <= 0xEF;
    }

    /// <summary>One walk through one file.</summary>
    private sealed class JpegWalk(byte[] file)
    {
        private static readonly Refusal Torn = new("torn", $"The picture is cut off or broken in the middle.");

        // a progressive picture of a camera has about ten; each one costs whoever draws it a walk over all of its pixels. Common practice, no source
        private const int MostScans = 64;
        private readonly MemoryStream plain = new(file.Length);
        private int at = 2;

        public int Width { get; private set; }

        public int Height { get; private set; }

        public byte[] Plain => plain.ToArray();

        /// <summary>Why it cannot be walked to its end, or null.</summary>
        public Refusal? ToTheEnd()
        {
            plain.Write(file, 0, 2);
            var scans = 0;
            while (true)
            {
                if (NextMarker() is not { } marker)
                    return Torn;
                if (marker == Marker.End)
                {
                    plain.Write([0xFF, Marker.End]);
                    return scans > 0 && Width > 0 ? null : Torn;
                }
                if (Segment() is not { } segment)
                    return Torn;
                if (Refused(marker, segment) is { } refusal)
                    return refusal;
                if (IsPicture(marker, segment))
                    Keep(marker, segment);
                at += segment.Count;
                if (marker == Marker.Scan)
                {
                    if (++scans > MostScans)
                        return new("unusual-jpeg", $"The picture is drawn in more than {MostScans} passes.");
                    KeepScan();
                }
            }
        }

        // any number of fill bytes may stand before a marker
        private byte? NextMarker()
        {
            if (at >= file.Length || file[at] != 0xFF)
                return null;
            while (at < file.Length && file[at] == 0xFF)
                at++;
            return at < file.Length ? file[at++] : null;
        }

        /// <summary>The segment that begins here, its two bytes of length first.</summary>
        private ArraySegment<byte>? Segment()
        {
            if (at + 2 > file.Length)
                return null;
            var length = BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(at));
            return length >= 2 && at + length <= file.Length ? new(file, at, length) : null;
        }

        private Refusal? Refused(byte marker, ArraySegment<byte> segment)
        {
            if (marker is 0xC0 or 0xC1 or 0xC2) // baseline, extended, progressive, all by Huffman
                return Frame(segment);
            return marker is 0xC4 or 0xDB or 0xDD or Marker.Scan or Marker.Comment || Marker.IsApplications(marker)
                ? null
                : new(
                    "unusual-jpeg",
                    $"The picture is coded in a way (marker FF{marker:X2}) that not every program can show."
                );
        }

        private Refusal? Frame(ArraySegment<byte> segment)
        {
            if (segment.Count < 8)
                return Torn;
            Height = BinaryPrimitives.ReadUInt16BigEndian(segment[3..]);
            Width = BinaryPrimitives.ReadUInt16BigEndian(segment[5..]);
            return Height == 0 || Width == 0 ? Torn
                : segment[7] is 1 or 3 ? null
                : new("unusual-jpeg", $"The picture has {segment[7]} colours, for print; 1 or 3 can be shown.");
        }

        /// <summary>Application segments and comments are not the picture, except a JFIF header that holds no thumbnail.</summary>
        private static bool IsPicture(byte marker, ArraySegment<byte> segment) =>
            (marker != Marker.Comment && !Marker.IsApplications(marker))
            || (marker == Marker.Header && segment.Count == 16 && segment.AsSpan(2, 5).SequenceEqual("JFIF\0"u8));

        private void Keep(byte marker, ArraySegment<byte> segment)
        {
            plain.Write([0xFF, marker]);
            plain.Write(segment);
        }

        /// <summary>Coded data: an FF in it is followed by 00, or by a restart; any other marker ends it.</summary>
        private void KeepScan()
        {
            var from = at;
            while (at < file.Length && !(file[at] == 0xFF && at + 1 < file.Length && EndsScan(file[at + 1])))
                at++;
            plain.Write(file, from, at - from);
        }

        private static bool EndsScan(byte second) => second is not (0x00 or (>= 0xD0 and <= 0xD7));
    }
}
