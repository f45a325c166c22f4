namespace Witnessmark.Ledger.PostgreSql;

/// <summary>The tables of the group's store: those of one shop's files, each divided by shop.</summary>
internal static class GroupSchema
{
    /// <summary>The form of the tables that this program knows.</summary>
    public const int Form = 2;

    private static readonly IReadOnlyList<GroupTable> First =
    [
        new(
            "entries",
            GroupTable.MayAdd,
            """
            "Order" bigint NOT NULL, "Id" text NOT NULL, "Shop" text NOT NULL, "Job" text NOT NULL, "Device" text NOT NULL,
            "Epoch" bigint NOT NULL, "Seq" bigint NOT NULL, "Kind" text NOT NULL, "Body" text NOT NULL, "Strikes" text, "Covers" text,
            "At" text NOT NULL, "By" text NOT NULL, "DevicePrevious" text, "Hash" text NOT NULL, "JobHash" text NOT NULL, "Received" text NOT NULL
            """,
            "\"Order\"",
            "\"Id\"",
            "\"Device\", \"Epoch\", \"Seq\"",
            "\"Job\", \"Order\""
        ),
        new(
            "job_heads",
            GroupTable.MayChange,
            """ "Job" text NOT NULL, "Entries" bigint NOT NULL, "LastOrder" bigint NOT NULL, "Hash" text NOT NULL """,
            "\"Job\""
        ),
        new(
            "ledger_identity",
            GroupTable.MayChange,
            """ "Row" bigint NOT NULL, "Id" text NOT NULL, "Created" text NOT NULL """,
            "\"Row\""
        ),
        new(
            "set_aside",
            GroupTable.MayTakeAway,
            """
            "Number" bigint NOT NULL, "Text" text NOT NULL, "TextHash" text NOT NULL, "Reason" text NOT NULL, "Why" text NOT NULL,
            "Id" text, "Device" text NOT NULL, "Epoch" bigint NOT NULL, "Seq" bigint, "Hash" text, "Received" text NOT NULL
            """,
            "\"Number\"",
            "\"TextHash\"",
            "\"Device\", \"Epoch\", \"Seq\", \"Number\""
        ),
        new(
            "person",
            GroupTable.MayChange,
            "name text NOT NULL, hash text, failures bigint NOT NULL, wait_until bigint, shut bigint NOT NULL",
            "name"
        ),
        new(
            "device",
            GroupTable.MayChange,
            """
            id text NOT NULL, label text NOT NULL, key_x text NOT NULL, key_y text NOT NULL, shared bigint NOT NULL,
            let_in_by text NOT NULL, at bigint NOT NULL, revoked bigint, revoked_by text
            """,
            "id"
        ),
        new(
            "code",
            GroupTable.MayTakeAway,
            "hash text NOT NULL, person text, given_by text NOT NULL, until bigint NOT NULL",
            "hash"
        ),
        new(
            "session",
            GroupTable.MayTakeAway,
            "hash text NOT NULL, person text NOT NULL, device text NOT NULL, started bigint NOT NULL, deed bigint NOT NULL",
            "hash",
            "device"
        ),
        new("used_nonce", GroupTable.MayTakeAway, "nonce text NOT NULL, until bigint NOT NULL", "nonce"),
        new("used_confirmation", GroupTable.MayAdd, "confirmation text NOT NULL, entry text NOT NULL", "confirmation"),
        new("unconfirmed", GroupTable.MayAdd, "entry text NOT NULL", "entry"),
        new(
            "event",
            GroupTable.MayAdd,
            "number bigint NOT NULL, at bigint NOT NULL, what text NOT NULL, person text, device text, says text NOT NULL, chain text NOT NULL",
            "number"
        ),
        new("shop_key", GroupTable.MayAdd, "row bigint NOT NULL, key bytea NOT NULL", "row"),
        new("closed", GroupTable.MayAdd, "row bigint NOT NULL, at bigint NOT NULL", "row"),
        new(
            "move",
            GroupTable.MayAdd,
            """
            row bigint NOT NULL, id text NOT NULL, kind text NOT NULL, item text NOT NULL, size text, batch text, amount text NOT NULL,
            person text NOT NULL, at text NOT NULL, job text, why text
            """,
            "row",
            "id"
        ),
        new("photograph", GroupTable.MayAdd, "sha256 text NOT NULL, bytes bytea NOT NULL", "sha256"),
        new("log_book", GroupTable.MayChange, "name text NOT NULL, book text NOT NULL", "name"),
        new("sealed_secret", GroupTable.MayAdd, "name text NOT NULL, sealed bytea NOT NULL", "name"),
        new("turn", GroupTable.MayChange, "what text NOT NULL", "what"),
    ];

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<GroupTable> Tables = [.. First, .. RegisterTables.All];

    // tables whose rows are numbered by the store
    private static readonly (string Table, string Column)[] Numbered =
    [
        ("set_aside", "\"Number\""),
        ("move", "row"),
        ("machine", "row"),
        ("import", "run"),
        ("model", "id"),
        ("campaign", "id"),
        ("says", "id"),
        ("sheet_revision", "number"),
    ];

    /// <summary>Makes the tables, which have no rows yet.</summary>
    public static string Whole =>
        $"CREATE SCHEMA witnessmark; CREATE TABLE witnessmark.form (number integer NOT NULL); INSERT INTO witnessmark.form VALUES ({Form});"
        + string.Concat(Tables.Select(table => table.Whole));

    /// <summary>Makes the parts of a shop, and gives its servers what they need.</summary>
    public static string Part(ShopName shop) =>
        $"CREATE SCHEMA {shop.Schema}; GRANT USAGE ON SCHEMA witnessmark, {shop.Schema} TO {shop.Role};"
        + $"GRANT SELECT ON witnessmark.form TO {shop.Role};"
        + Parts(shop, Tables);

    /// <summary>Makes what a store of form 1 lacks, for all of its shops.</summary>
    public static string FromFormOne(IEnumerable<ShopName> shops) =>
        string.Concat(RegisterTables.All.Select(table => table.Whole))
        + string.Concat(shops.Select(shop => Parts(shop, RegisterTables.All)))
        + $"UPDATE witnessmark.form SET number = {RegisterTables.Since};";

    /// <summary>Lets the numbers of copied rows go on where they end.</summary>
    public static string GoOnNumbering() =>
        string.Concat(
            Numbered.Select(n =>
                $"SELECT setval('{Sequence(n.Table)}', (SELECT max({n.Column}) FROM {n.Table})) WHERE EXISTS (SELECT FROM {n.Table});"
            )
        );

    private static string Parts(ShopName shop, IReadOnlyList<GroupTable> tables) =>
        string.Concat(tables.Select(table => table.Part(shop)))
        + string.Concat(
            Numbered
                .Where(n => tables.Any(table => table.Name == n.Table))
                .Select(n => Numbers(shop, n.Table, n.Column))
        );

    private static string Numbers(ShopName shop, string table, string column) =>
        $"CREATE SEQUENCE {shop.Schema}.{Sequence(table)} OWNED BY {shop.Schema}.{table}.{column};"
        + $"ALTER TABLE {shop.Schema}.{table} ALTER COLUMN {column} SET DEFAULT nextval('{shop.Schema}.{Sequence(table)}');"
        + $"GRANT USAGE, UPDATE ON SEQUENCE {shop.Schema}.{Sequence(table)} TO {shop.Role};";

    private static string Sequence(string table) => $"{table}_number";
}
