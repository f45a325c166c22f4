namespace Witnessmark.Ledger.PostgreSql;

/// <summary>The tables of the register of machines, of recalls and bulletins, and of figures that were set on a screen.</summary>
internal static class RegisterTables
{
    /// <summary>The form of the store from which on there are these.</summary>
    public const int Since = 2;

    /// <summary>Those of <c>machines.db</c>.</summary>
    public static readonly IReadOnlyList<GroupTable> OfMachines =
    [
        new(
            "machine",
            GroupTable.MayChange,
            "row bigint NOT NULL, id text NOT NULL, vin text, frame text, plate text, make text, name text NOT NULL, year bigint, sheet text",
            "row",
            "id",
            "vin"
        ),
        new(
            "distance",
            GroupTable.MayAdd,
            "machine bigint NOT NULL, day text NOT NULL, km double precision NOT NULL",
            "machine, day, km"
        ),
        new(
            "owner",
            GroupTable.MayTakeAway,
            "machine bigint NOT NULL, name text NOT NULL, contact text NOT NULL",
            "machine"
        ),
        new("machine_find", GroupTable.MayTakeAway, "rowid bigint NOT NULL, keys text NOT NULL", "rowid"),
        new("owner_find", GroupTable.MayTakeAway, "rowid bigint NOT NULL, keys text NOT NULL", "rowid"),
    ];

    /// <summary>Those of <c>campaigns.db</c>.</summary>
    public static readonly IReadOnlyList<GroupTable> OfCampaigns =
    [
        new(
            "import",
            GroupTable.MayChange,
            "run bigint NOT NULL, source bigint NOT NULL, file text NOT NULL, at text NOT NULL, rows bigint NOT NULL, set_aside bigint NOT NULL",
            "run"
        ),
        new(
            "model",
            GroupTable.MayChange,
            "id bigint NOT NULL, make_key text NOT NULL, model_key text NOT NULL, make text NOT NULL, model text NOT NULL",
            "id",
            "make_key, model_key"
        ),
        new(
            "campaign",
            GroupTable.MayAdd,
            "id bigint NOT NULL, number text NOT NULL, component text NOT NULL, source bigint NOT NULL",
            "id",
            "number, component, source"
        ),
        new(
            "says",
            GroupTable.MayTakeAway,
            """
            id bigint NOT NULL, digest bytea NOT NULL, maker text NOT NULL, makers_number text NOT NULL, built_from text, built_to text,
            recorded text, affected bigint, defect text NOT NULL, consequence text NOT NULL, remedy text NOT NULL, notes text NOT NULL,
            do_not_ride bigint, park_outside bigint, vins text NOT NULL
            """,
            "id",
            "digest"
        ),
        new(
            "concern",
            GroupTable.MayChange,
            """
            model bigint NOT NULL, year bigint NOT NULL, campaign bigint NOT NULL, says bigint NOT NULL, run bigint NOT NULL, before bigint
            """,
            "model, year, campaign"
        ),
        new(
            "withdrawn",
            GroupTable.MayAdd,
            "number text NOT NULL, because text NOT NULL, by text NOT NULL, at text NOT NULL, records bigint NOT NULL, run bigint NOT NULL"
        ),
    ];

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<GroupTable> All =
    [
        .. OfMachines,
        .. OfCampaigns,
        new(
            "sheet_revision",
            GroupTable.MayAdd,
            "number bigint NOT NULL, sheet text NOT NULL, revision bigint NOT NULL, body text NOT NULL",
            "number",
            "sheet, revision"
        ),
    ];
}
