using System.Data.Common;
using System.Globalization;
using System.Security.Cryptography;

namespace Witnessmark.Ledger.Doors;

/// <summary>The rows of the door, inside one piece of work.</summary>
public sealed partial class DoorRows
{
    private readonly DbConnection connection;

    private readonly List<DoorEvent> noted = [];

    internal DoorRows(DbConnection connection) => this.connection = connection;

    /// <summary>The events of this piece of work.</summary>
    internal IReadOnlyList<DoorEvent> Noted => noted;

    /// <summary>Everybody of whom something is kept, by name.</summary>
    public IReadOnlyList<KeptPerson> People() =>
        connection.Rows("SELECT name, hash, failures, wait_until, shut FROM person ORDER BY name", PersonOf);

    /// <summary>What is kept of a person; nothing yet for one who never had a code.</summary>
    public KeptPerson Person(string name) =>
        connection
            .Rows("SELECT name, hash, failures, wait_until, shut FROM person WHERE name = $1", PersonOf, name)
            .SingleOrDefault()
        ?? new(name, null, 0, null, false);

    /// <summary>Keeps what is known of a person now.</summary>
    public void Put(KeptPerson person) =>
        connection.Change(
            "INSERT INTO person (name, hash, failures, wait_until, shut) VALUES ($1, $2, $3, $4, $5) ON CONFLICT (name) DO UPDATE "
                + "SET hash = excluded.hash, failures = excluded.failures, wait_until = excluded.wait_until, shut = excluded.shut",
            person.Name,
            person.Hash,
            person.Failures,
            Stamp(person.WaitUntil),
            Bit(person.Shut)
        );

    /// <summary>Keeps a code.</summary>
    public void Add(KeptCode code) =>
        connection.Change(
            "INSERT INTO code (hash, person, given_by, until) VALUES ($1, $2, $3, $4)",
            code.Hash,
            code.Person,
            code.GivenBy,
            Stamp(code.Until)
        );

    /// <summary>Takes a code away and gives it; null when there is none. Codes that are over go with it.</summary>
    public KeptCode? Take(string hash, DateTimeOffset now)
    {
        connection.Change("DELETE FROM code WHERE until <= $1", Stamp(now));
        var code = connection
            .Rows("SELECT hash, person, given_by, until FROM code WHERE hash = $1", CodeOf, hash)
            .SingleOrDefault();
        connection.Change("DELETE FROM code WHERE hash = $1", hash);
        return code;
    }

    /// <summary>Codes of a person are good for nothing any more.</summary>
    public void DropCodesOf(string person) => connection.Change("DELETE FROM code WHERE person = $1", person);

    /// <summary>Until when the code of a person is good; null when there is none.</summary>
    public DateTimeOffset? CodeOf(string person, DateTimeOffset now) =>
        connection
            .Rows(
                "SELECT hash, person, given_by, until FROM code WHERE person = $1 AND until > $2",
                CodeOf,
                person,
                Stamp(now)
            )
            .Select(c => (DateTimeOffset?)c.Until)
            .Max();

    /// <summary>Writes down that a nonce was used; false when it had been.</summary>
    public bool Use(string nonce, DateTimeOffset until, DateTimeOffset now)
    {
        connection.Change("DELETE FROM used_nonce WHERE until <= $1", Stamp(now));
        return connection.Change(
                "INSERT INTO used_nonce (nonce, until) VALUES ($1, $2) ON CONFLICT DO NOTHING",
                nonce,
                Stamp(until)
            ) == 1;
    }

    /// <summary>The key by which the shop knows its own numbers and confirmations again; null until it was drawn.</summary>
    public byte[]? Key() =>
        connection.Rows("SELECT key FROM shop_key", row => row.GetFieldValue<byte[]>(0)).SingleOrDefault();

    /// <summary>That key; drawn on first use.</summary>
    public byte[] KeyOrNew()
    {
        connection.Change(
            "INSERT INTO shop_key (row, key) VALUES (1, $1) ON CONFLICT DO NOTHING",
            RandomNumberGenerator.GetBytes(32)
        );
        return Key()!;
    }

    /// <summary>Whether a confirmation is used for this entry and for no other; the first entry that comes with it has it.</summary>
    public bool Use(string confirmation, string entry)
    {
        connection.Change(
            "INSERT INTO used_confirmation (confirmation, entry) VALUES ($1, $2) ON CONFLICT DO NOTHING",
            confirmation,
            entry
        );
        return connection
                .Rows(
                    "SELECT entry FROM used_confirmation WHERE confirmation = $1",
                    row => row.GetString(0),
                    confirmation
                )
                .Single() == entry;
    }

    /// <summary>Whether the door was ever closed.</summary>
    public bool IsClosed() => connection.Rows("SELECT at FROM closed", row => row.GetInt64(0)).Count > 0;

    /// <summary>The door is closed from now on.</summary>
    public void Close(DateTimeOffset now) =>
        connection.Change("INSERT INTO closed (row, at) VALUES (1, $1) ON CONFLICT DO NOTHING", Stamp(now));

    /// <summary>Writes down that an entry counts for nothing, since nobody showed whose word it is; false when it was written down before.</summary>
    public bool Flag(string entry) =>
        connection.Change("INSERT INTO unconfirmed (entry) VALUES ($1) ON CONFLICT DO NOTHING", entry) == 1;

    /// <summary>Entries that count for nothing.</summary>
    public IReadOnlyList<string> Flagged() => connection.Rows("SELECT entry FROM unconfirmed", row => row.GetString(0));

    /// <summary>Writes an event down. Names and jobs in it may come from anybody: what could look like another line of the book stands as U+FFFD.</summary>
    public void Note(DateTimeOffset at, string what, string? person, string? device, string says)
    {
        var last = Events(1).SingleOrDefault();
        (person, device, says) = (OneLine(person), OneLine(device), OneLine(says)!);
        var happened = new DoorEvent((last?.Number ?? 0) + 1, at, what, person, device, says, "");
        happened = happened with { Chain = EventChain.Next(last?.Chain ?? "", happened) };
        noted.Add(happened);
        connection.Change(
            "INSERT INTO event (number, at, what, person, device, says, chain) VALUES ($1, $2, $3, $4, $5, $6, $7)",
            happened.Number,
            Stamp(at),
            what,
            person,
            device,
            says,
            happened.Chain
        );
    }

    /// <summary>The last events, the newest first.</summary>
    public IReadOnlyList<DoorEvent> Events(int most) =>
        connection.Rows(
            "SELECT number, at, what, person, device, says, chain FROM event ORDER BY number DESC LIMIT $1",
            EventOf,
            most
        );

    /// <summary>All events in their order.</summary>
    public IReadOnlyList<DoorEvent> AllEvents() =>
        connection.Rows("SELECT number, at, what, person, device, says, chain FROM event ORDER BY number", EventOf);

    // a number in both databases: what SQLite has instead of truth
    private static long Bit(bool yes) => yes ? 1 : 0;

    private static string? OneLine(string? text) =>
        text is null ? null : string.Concat(text.Select(c => IsPrinted(c) ? c : '\uFFFD'));

    // the marks that turn the direction of writing (Cf) could hide a part of a line
    private static bool IsPrinted(char c) => !char.IsControl(c) && char.GetUnicodeCategory(c) != UnicodeCategory.Format;

    private static KeptPerson PersonOf(DbDataReader row) =>
        new(row.GetString(0), Text(row, 1), row.GetInt32(2), MaybeTime(row, 3), row.GetInt32(4) != 0);

    private static KeptCode CodeOf(DbDataReader row) =>
        new(row.GetString(0), Text(row, 1), row.GetString(2), Time(row.GetInt64(3)));

    private static DoorEvent EventOf(DbDataReader row) =>
        new(
            row.GetInt64(0),
            Time(row.GetInt64(1)),
            row.GetString(2),
            Text(row, 3),
            Text(row, 4),
            row.GetString(5),
            row.GetString(6)
        );

    private static string? Text(DbDataReader row, int at) => row.IsDBNull(at) ? null : row.GetString(at);

    private static DateTimeOffset? MaybeTime(DbDataReader row, int at) =>
        row.IsDBNull(at) ? null : Time(row.GetInt64(at));

    private static DateTimeOffset Time(long stamp) => DateTimeOffset.FromUnixTimeMilliseconds(stamp);

    private static long? Stamp(DateTimeOffset? at) => at?.ToUnixTimeMilliseconds();
}
