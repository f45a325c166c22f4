using System.Globalization;
using System.Text;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary>Where the rows go that cannot be read: line number, reason and the row byte for byte, between tabs.</summary>
internal sealed class AsideFile(string? path) : IDisposable
{
    private const int MostToSay = 10;
    private readonly FileStream? file = path is null ? null : File.Create(path, bufferSize: 1 << 16);
    private readonly List<string> first = [];

    /// <summary>The first few, for a person to read.</summary>
    public IReadOnlyList<string> First => first;

    public void Take(RowAside row)
    {
        if (first.Count < MostToSay)
            first.Add($"line {row.Line}: {row.Why}");
        file?.Write(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{row.Line}\t{row.Why}\t")));
        file?.Write(row.Bytes.TrimEnd((byte)'\r'));
        file?.Write("\n"u8);
    }

    public void Dispose() => file?.Dispose();
}
