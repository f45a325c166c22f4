namespace Witnessmark.OwnShop;

/// <summary>Shops that lay in a data folder before, by the names that entries have for them: what devices still bring of them is no work of this shop.</summary>
public static class PutAwayShops
{
    /// <summary>Name of the file, a shop on each line.</summary>
    public const string FileName = "put-away";

    /// <summary>Their names; none where nothing was put away.</summary>
    public static IReadOnlyList<string> Of(string data) =>
        Path.Combine(data, FileName) is var path && File.Exists(path)
            ? [.. File.ReadAllLines(path).Where(line => line.Length > 0)]
            : [];
}
