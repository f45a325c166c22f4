using BitMiracle.LibJpeg.Classic;

namespace Witnessmark.Photographs;

/// <summary>A photograph as large as paper and page show it: the stored one stays as it was taken, and its hash is that of the stored one.</summary>
/// <remarks>
/// A JPEG file is read at a half, a quarter or an eighth straight out of its cosine blocks (ITU-T T.81, A.3.3 inverse DCT, of fewer
/// coefficients), which is faster than reading all of it.
/// </remarks>
public static class SmallPicture
{
    /// <summary>The longest side is at least this: 300 dots an inch on the 52 mm that the handover sheet gives it.</summary>
    public const int LeastSide = 620;

    private const int Quality = 75;

    /// <summary>The small file; the file itself where it is small already, or of a kind that is not made smaller here.</summary>
    public static byte[] Of(byte[] file)
    {
        try
        {
            return Smaller(file) is { } small && small.Length < file.Length ? small : file;
        }
        catch (Exception unread) when (unread is not OutOfMemoryException)
        {
            return file; // what this reader cannot read another one may: the paper carries it as it is
        }
    }

    private static byte[]? Smaller(byte[] file)
    {
        var read = new jpeg_decompress_struct();
        using var source = new MemoryStream(file);
        read.jpeg_stdio_src(source);
        read.jpeg_read_header(true);
        var part = Part(Math.Max(read.Image_width, read.Image_height));
        if (part == 1 || read.Jpeg_color_space is not (J_COLOR_SPACE.JCS_YCbCr or J_COLOR_SPACE.JCS_GRAYSCALE))
            return null;
        (read.Scale_num, read.Scale_denom) = (1, part);
        read.Out_color_space = read.Jpeg_color_space; // from one file to the other no colour is converted
        read.jpeg_start_decompress();
        using var small = new MemoryStream();
        var write = new jpeg_compress_struct();
        write.jpeg_stdio_dest(small);
        (write.Image_width, write.Image_height) = (read.Output_width, read.Output_height);
        (write.Input_components, write.In_color_space) = (read.Output_components, read.Out_color_space);
        write.jpeg_set_defaults();
        write.jpeg_set_quality(Quality, true);
        write.jpeg_start_compress(true);
        byte[][] row = [new byte[read.Output_width * read.Output_components]];
        while (read.Output_scanline < read.Output_height)
        {
            read.jpeg_read_scanlines(row, 1);
            write.jpeg_write_scanlines(row, 1);
        }
        write.jpeg_finish_compress();
        read.jpeg_finish_decompress();
        return small.ToArray();
    }

    /// <summary>One in so many: the largest of 8, 4, 2 and 1 that leaves the longest side long enough.</summary>
    private static int Part(int longest) => ((int[])[8, 4, 2, 1]).First(p => p == 1 || longest / p >= LeastSide);
}
