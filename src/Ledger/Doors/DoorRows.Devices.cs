using System.Data.Common;

namespace Witnessmark.Ledger.Doors;

public sealed partial class DoorRows
{
    private const string DeviceColumns = "id, label, key_x, key_y, shared, let_in_by, at, revoked, revoked_by";
    private const string SessionColumns = "hash, person, device, started, deed";

    /// <summary>All devices that ever came in, the newest first.</summary>
    public IReadOnlyList<KeptDevice> Devices() =>
        connection.Rows($"SELECT {DeviceColumns} FROM device ORDER BY at DESC, id", DeviceOf);

    /// <summary>A device; null when it was never let in.</summary>
    public KeptDevice? Device(string id) =>
        connection.Rows($"SELECT {DeviceColumns} FROM device WHERE id = $1", DeviceOf, id).SingleOrDefault();

    /// <summary>Lets a device in.</summary>
    public void Add(KeptDevice device) =>
        connection.Change(
            $"INSERT INTO device ({DeviceColumns}) VALUES ($1, $2, $3, $4, $5, $6, $7, NULL, NULL)",
            device.Id,
            device.Label,
            device.KeyX,
            device.KeyY,
            Bit(device.Shared),
            device.LetInBy,
            Stamp(device.At)
        );

    /// <summary>Shuts a device out, and whoever is signed in on it.</summary>
    public void Revoke(string device, string by, DateTimeOffset now)
    {
        connection.Change("UPDATE device SET revoked = $2, revoked_by = $3 WHERE id = $1", device, Stamp(now), by);
        connection.Change("DELETE FROM session WHERE device = $1", device);
    }

    /// <summary>Signs in. A device has one session: whoever was signed in on it is out.</summary>
    public void Add(KeptSession session)
    {
        connection.Change("DELETE FROM session WHERE device = $1", session.Device);
        connection.Change(
            $"INSERT INTO session ({SessionColumns}) VALUES ($1, $2, $3, $4, $5)",
            session.Hash,
            session.Person,
            session.Device,
            Stamp(session.Started),
            Stamp(session.Deed)
        );
    }

    /// <summary>A session by the hash of its token; null when it ended.</summary>
    public KeptSession? Session(string hash) =>
        connection.Rows($"SELECT {SessionColumns} FROM session WHERE hash = $1", SessionOf, hash).SingleOrDefault();

    /// <summary>All that were not ended, also those that are over by their time.</summary>
    public IReadOnlyList<KeptSession> Sessions() => connection.Rows($"SELECT {SessionColumns} FROM session", SessionOf);

    /// <summary>Whoever is signed in did something.</summary>
    public void Deed(string hash, DateTimeOffset now) =>
        connection.Change("UPDATE session SET deed = $2 WHERE hash = $1", hash, Stamp(now));

    /// <summary>Ends a session.</summary>
    public void End(string hash) => connection.Change("DELETE FROM session WHERE hash = $1", hash);

    /// <summary>Ends all sessions of a person.</summary>
    public void EndAllOf(string person) => connection.Change("DELETE FROM session WHERE person = $1", person);

    private static KeptDevice DeviceOf(DbDataReader row) =>
        new(
            row.GetString(0),
            row.GetString(1),
            row.GetString(2),
            row.GetString(3),
            row.GetInt32(4) != 0,
            row.GetString(5),
            Time(row.GetInt64(6)),
            MaybeTime(row, 7),
            Text(row, 8)
        );

    private static KeptSession SessionOf(DbDataReader row) =>
        new(row.GetString(0), row.GetString(1), row.GetString(2), Time(row.GetInt64(3)), Time(row.GetInt64(4)));
}
