using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>What tells two texts of campaigns apart: SHA-256 over all they say, each field behind its length, so that no field can run into the next.</summary>
internal sealed class SaysDigest
{
    private byte[] buffer = new byte[4096];
    private int length;

    public byte[] Of(CampaignText says)
    {
        length = 0;
        Add(says.Maker);
        Add(says.MakersNumber);
        Add(Day(says.BuiltFrom));
        Add(Day(says.BuiltTo));
        Add(Day(says.Recorded));
        Add(says.Affected?.ToString(CultureInfo.InvariantCulture));
        Add(says.Defect);
        Add(says.Consequence);
        Add(says.Remedy);
        Add(says.Notes);
        Add(says.DoNotRide?.ToString());
        Add(says.ParkOutside?.ToString());
        Add(Vins(says));
        return SHA256.HashData(buffer.AsSpan(0, length));
    }

    public static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Vins(CampaignText says) => string.Join('\n', says.Vins);

    private void Add(string? text)
    {
        var needed = length + sizeof(int) + Encoding.UTF8.GetMaxByteCount(text?.Length ?? 0);
        if (needed > buffer.Length)
            Array.Resize(ref buffer, 2 * needed);
        var bytes = text is null ? -1 : Encoding.UTF8.GetBytes(text, buffer.AsSpan(length + sizeof(int)));
        BinaryPrimitives.WriteInt32LittleEndian(buffer.AsSpan(length), bytes);
        length += sizeof(int) + Math.Max(0, bytes);
    }
}
