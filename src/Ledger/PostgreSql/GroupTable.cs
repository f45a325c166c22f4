namespace Witnessmark.Ledger.PostgreSql;

/// <summary>A table of the group's store. Each shop has its own part of it, which holds that shop's rows and no others.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Rights">What a server may do with its shop's part; what an entry or an event says, none may change.</param>
/// <param name="Columns">Its columns, without the shop's.</param>
/// <param name="Unique">Columns that together are there once in a shop.</param>
internal sealed record GroupTable(string Name, string Rights, string Columns, params string[] Unique)
{
    /// <summary>What is said stays.</summary>
    public const string MayAdd = "SELECT, INSERT";

    /// <summary>Rows stay, what they say changes.</summary>
    public const string MayChange = "SELECT, INSERT, UPDATE";

    /// <summary>Rows come and go.</summary>
    public const string MayTakeAway = "SELECT, INSERT, UPDATE, DELETE";

    private const string Of = "of_shop";

    // by who logged in, not by what the session says of itself: no statement of a server can make it another shop
    private const string OwnRows = $"current_user::text = 'witnessmark_' || {Of}";

    /// <summary>Makes the whole, which has no row of its own.</summary>
    public string Whole =>
        $"CREATE TABLE witnessmark.{Name} ({Of} text COLLATE \"C\" NOT NULL, {Collated}) PARTITION BY LIST ({Of});"
        + Guarded($"witnessmark.{Name}");

    /// <summary>Makes the part of a shop.</summary>
    public string Part(ShopName shop)
    {
        var part = $"{shop.Schema}.{Name}";
        return $"CREATE TABLE {part} PARTITION OF witnessmark.{Name} ({Of} DEFAULT '{shop}') FOR VALUES IN ('{shop}');"
            + string.Concat(Unique.Select(columns => $"CREATE UNIQUE INDEX ON {part} ({columns});"))
            + Guarded(part)
            + $"GRANT {Rights} ON {part} TO {shop.Role};";
    }

    // by bytes, as SQLite compares, whatever language the cluster was made in
    private string Collated => Columns.Replace(" text", " text COLLATE \"C\"", StringComparison.Ordinal);

    private static string Guarded(string table) =>
        $"ALTER TABLE {table} ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;"
        + $"CREATE POLICY own_rows ON {table} USING ({OwnRows}) WITH CHECK ({OwnRows});";
}
