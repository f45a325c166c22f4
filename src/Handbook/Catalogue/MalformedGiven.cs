namespace Witnessmark.Handbook.Catalogue;

/// <summary>The request is not of the contract's form: which key, what stands there, what is allowed.</summary>
public sealed class MalformedGiven(string key, string found, string allowed)
    : Exception($"{(key.Length == 0 ? "The request" : key)}: {found}; allowed: {allowed}.")
{
    /// <summary>The key, with dots and list numbers when it lies inside: <c>trials.1.slack</c>.</summary>
    public string Key { get; } = key;
}
