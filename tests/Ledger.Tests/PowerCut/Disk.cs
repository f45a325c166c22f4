namespace Witnessmark.Ledger.Tests.PowerCut;

/// <summary>
/// What would be on the disk after a loss of power: what was synchronised, and of what was only written any part. Lost writes come back as
/// they please: each whole, not at all, or its first sectors alone.
/// </summary>
internal sealed class Disk
{
    private const int Sector = 512;

    private readonly Dictionary<string, byte[]> durable = new(StringComparer.Ordinal);
    private readonly List<(string Path, long Offset, byte[]? Data)> pending = [];
    private readonly Lock one = new();

    /// <summary>Called after each write or synchronisation, while no other comes in between.</summary>
    public Action? Happened { get; set; }

    /// <summary>Asked before each write or synchronisation: what SQLite is told instead of it, or 0.</summary>
    public Func<int> Refuses { get; set; } = () => 0;

    /// <summary>How often something was synchronised.</summary>
    public int Syncs { get; private set; }

    public void Opened(string path, byte[] found)
    {
        lock (one)
            durable.TryAdd(path, found);
    }

    public void Wrote(string path, long offset, byte[] data) => Put(path, offset, data);

    public void Truncated(string path, long length) => Put(path, length, null);

    public void Synced(string path)
    {
        lock (one)
        {
            foreach (var change in pending.Where(p => p.Path == path))
                durable[path] = Changed(durable[path], change.Offset, change.Data);
            pending.RemoveAll(p => p.Path == path);
            Syncs++;
            Happened?.Invoke();
        }
    }

    public void Deleted(string path)
    {
        lock (one)
        {
            durable.Remove(path);
            pending.RemoveAll(p => p.Path == path);
        }
    }

    /// <summary>The files as they would be found after a loss of power now.</summary>
    public IReadOnlyDictionary<string, byte[]> AfterCut(Random chance)
    {
        lock (one)
        {
            var found = durable.ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
            foreach (var (path, offset, data) in pending)
                if (Surviving(data, chance) is { } left)
                    found[path] = Changed(found[path], offset, data is null ? null : left);
            return found;
        }
    }

    private void Put(string path, long offset, byte[]? data)
    {
        lock (one)
        {
            pending.Add((path, offset, data));
            Happened?.Invoke();
        }
    }

    private static byte[]? Surviving(byte[]? data, Random chance) =>
        chance.Next(3) switch
        {
            0 => data ?? [],
            1 when data is not null => data[..(chance.Next(data.Length / Sector + 1) * Sector)],
            _ => null,
        };

    /// <summary>Without data the file ends at the offset.</summary>
    private static byte[] Changed(byte[] file, long offset, byte[]? data)
    {
        var length = data is null ? offset : Math.Max(file.Length, offset + data.Length);
        var changed = new byte[length];
        file.AsSpan(0, (int)Math.Min(file.Length, length)).CopyTo(changed);
        data?.CopyTo(changed, offset);
        return changed;
    }
}
