using System.Text.Json;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Keys;

/// <summary>The keys of a data folder: the shop's own in <c>keys/shop.json</c>, those of others in <c>keys/known/NAME.json</c>.</summary>
public static class KeyFolder
{
    private const string Own = "keys/shop.json";
    private const string Others = "keys/known";
    private const string ThisWorkshop = "this workshop";

    /// <summary>The shop's key; made on first use.</summary>
    /// <exception cref="FormatException">The file holds no key.</exception>
    public static ShopKey ShopKey(string data)
    {
        var path = Path.Combine(data, Own);
        if (!File.Exists(path))
            SecretFile.Write(path, Keys.ShopKey.NewFile(Keys.ShopKey.Drawn()));
        try
        {
            return Keys.ShopKey.Read(File.ReadAllText(path));
        }
        catch (FormatException wrong)
        {
            throw new FormatException(
                $"{path}: {wrong.Message} Put the right file back; a new key would be a stranger to everybody.",
                wrong
            );
        }
    }

    /// <summary>The shop's private key as its file has it; null when none was made.</summary>
    /// <exception cref="FormatException">The file holds no key.</exception>
    internal static string? TextOfShopKey(string data)
    {
        if (!File.Exists(Path.Combine(data, Own)))
            return null;
        ShopKey(data);
        return File.ReadAllText(Path.Combine(data, Own));
    }

    /// <summary>The keys in the files of a folder and its folders, each by the name of its file; the shop's own is "this workshop".</summary>
    /// <exception cref="FormatException">A file holds no key.</exception>
    public static KnownKeys Known(string folder) => new(In(folder));

    /// <summary>The shop's own key, wherever it lies, and those of others in a data folder.</summary>
    /// <exception cref="FormatException">A file holds no key.</exception>
    public static KnownKeys OthersAnd(PublicKey own, string data) =>
        new([
            (own, ThisWorkshop),
            .. Directory.Exists(Path.Combine(data, Others)) ? In(Path.Combine(data, Others)) : [],
        ]);

    private static IEnumerable<(PublicKey, string)> In(string folder) =>
        Directory
            .GetFiles(folder, "*.json", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .Select(file => (Public(file), Name(file)));

    /// <summary>All keys that a data folder knows.</summary>
    public static KnownKeys OfShop(string data)
    {
        ShopKey(data);
        return Known(Path.Combine(data, "keys"));
    }

    /// <summary>Takes another shop's public key in under a name.</summary>
    public static string Trust(string data, string file, string name)
    {
        var key = Public(file);
        var path = Path.Combine(data, Others, $"{name}.json");
        SecretFile.Write(path, JsonText(key));
        return key.Id;
    }

    /// <summary>A public key as a file.</summary>
    public static string JsonText(PublicKey key) =>
        $$"""{"crv":"P-256","kty":"EC","x":"{{key.X}}","y":"{{key.Y}}"}""" + "\n";

    private static string Name(string file) =>
        Path.GetFileName(Path.GetDirectoryName(file)) == "keys" && Path.GetFileName(file) == "shop.json"
            ? ThisWorkshop
            : Path.GetFileNameWithoutExtension(file);

    private static PublicKey Public(string file)
    {
        try
        {
            using var jwk = JsonDocument.Parse(File.ReadAllText(file));
            return PublicKey.Read(jwk.RootElement);
        }
        catch (Exception wrong) when (wrong is JsonException or FormatException)
        {
            throw new FormatException($"{file}: {wrong.Message}", wrong);
        }
    }
}
