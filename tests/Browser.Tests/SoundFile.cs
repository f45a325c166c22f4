using System.Buffers.Binary;
using Witnessmark.Handbook.Sound;
using Witnessmark.Handbook.Tests.Sound;

namespace Witnessmark.Browser.Tests;

/// <summary>Sounds of a known pitch as files that a browser takes for its microphone: 16 bit, one channel, 48 kHz.</summary>
internal static class SoundFile
{
    private const int Rate = 48_000;

    /// <summary>A belt that is plucked every two seconds, in a quiet room.</summary>
    public static string Plucked(double hertz)
    {
        var made = new SoundMaker(11, 8, Rate);
        for (var at = 0.1; at < 8; at += 2)
            made.Plucked(hertz, at);
        return Write(Scaled(made.NoiseOf(0.01).Recording, 0.6));
    }

    /// <summary>An exhaust that fires so often.</summary>
    public static string Firing(double hertz) => Write(Scaled(new SoundMaker(5, 8, Rate).Firing(hertz).Recording, 0.6));

    /// <summary>White noise alone: there is nothing in it to hear.</summary>
    public static string Noise() => Write(Scaled(new SoundMaker(3, 8, Rate).NoiseOf(0.1).Recording, 0.6));

    /// <summary>Nothing.</summary>
    public static string Silence() => Write(new double[8 * Rate]);

    private static double[] Scaled(Recording sound, double peak)
    {
        var most = sound.Samples.Max(Math.Abs);
        return [.. sound.Samples.Select(s => s / most * peak)];
    }

    private static string Write(double[] samples)
    {
        var file = new byte[44 + 2 * samples.Length];
        "RIFF"u8.CopyTo(file);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), file.Length - 8);
        "WAVEfmt "u8.CopyTo(file.AsSpan(8));
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(16), 16);
        BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(20), 1);
        BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(22), 1);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(24), Rate);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(28), 2 * Rate);
        BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(32), 2);
        BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(34), 16);
        "data"u8.CopyTo(file.AsSpan(36));
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(40), 2 * samples.Length);
        for (var i = 0; i < samples.Length; i++)
            BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(44 + 2 * i), (short)(32767 * samples[i]));
        var path = Path.Combine(Path.GetTempPath(), $"witnessmark-{Guid.NewGuid():N}.wav");
        File.WriteAllBytes(path, file);
        return path;
    }
}
