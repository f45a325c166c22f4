namespace Witnessmark.Paper.LogBook;

/// <summary>The keys that whoever checks a log book trusts, each with the name it is known by.</summary>
public sealed class KnownKeys(IEnumerable<(PublicKey Key, string Name)> keys)
{
    private readonly Dictionary<string, string> names = keys.GroupBy(k => k.Key.Thumbprint)
        .ToDictionary(k => k.Key, k => k.First().Name);

    /// <summary>No key is known.</summary>
    public static KnownKeys None { get; } = new([]);

    /// <summary>The name of a key, or null where it is not known.</summary>
    public string? NameOf(PublicKey key) => names.GetValueOrDefault(key.Thumbprint);
}
