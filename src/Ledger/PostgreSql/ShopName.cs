using System.Text.RegularExpressions;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>The name of a shop within its group. Role and schema in the store are called after it, so it is letters, digits and underscores.</summary>
public sealed partial record ShopName
{
    private const string RoleStart = "witnessmark_";
    private const string SchemaStart = "shop_";

    private ShopName(string text) => Text = text;

    /// <summary>As it is written.</summary>
    public string Text { get; }

    /// <summary>Who its servers log in as. Who that is, and nothing that a server says, decides whose rows it gets.</summary>
    public string Role => RoleStart + Text;

    /// <summary>Where its own part of each table lies.</summary>
    public string Schema => SchemaStart + Text;

    /// <summary>A name that is allowed.</summary>
    /// <exception cref="FormatException">It is not; what is allowed is said.</exception>
    public static ShopName Of(string text) =>
        Allowed().IsMatch(text)
            ? new(text)
            : throw new FormatException(
                $"\"{text}\" is no name of a shop: a small letter first, then small letters, digits and underscores, at most 40."
            );

    /// <summary>The shop whose servers log in so.</summary>
    /// <exception cref="FormatException">It is no shop's role.</exception>
    public static ShopName OfRole(string? role) =>
        role is not null && role.StartsWith(RoleStart, StringComparison.Ordinal)
            ? Of(role[RoleStart.Length..])
            : throw new FormatException(
                $"\"{role}\" is not the role of a shop, which begins with {RoleStart}: take the file that witnessmark group add wrote."
            );

    /// <inheritdoc />
    public override string ToString() => Text;

    [GeneratedRegex(@"\A[a-z][a-z0-9_]{0,39}\z")]
    private static partial Regex Allowed();
}
