using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Doors;

/// <summary>
/// The tables of <c>door.db</c>. Of what somebody knows (secret, code, session) only a hash is kept; times are milliseconds since 1970.
/// </summary>
internal static class DoorSchema
{
    public static readonly SchemaSteps Steps = new(
        "The people and devices that may come in",
        """
        CREATE TABLE person (
            name TEXT NOT NULL PRIMARY KEY,
            hash TEXT,
            failures INTEGER NOT NULL DEFAULT 0,
            wait_until INTEGER,
            shut INTEGER NOT NULL DEFAULT 0
        );
        CREATE TABLE device (
            id TEXT NOT NULL PRIMARY KEY,
            label TEXT NOT NULL,
            key_x TEXT NOT NULL,
            key_y TEXT NOT NULL,
            shared INTEGER NOT NULL,
            let_in_by TEXT NOT NULL,
            at INTEGER NOT NULL,
            revoked INTEGER,
            revoked_by TEXT
        );
        CREATE TABLE code (
            hash TEXT NOT NULL PRIMARY KEY,
            person TEXT,
            given_by TEXT NOT NULL,
            until INTEGER NOT NULL
        );
        CREATE TABLE session (
            hash TEXT NOT NULL PRIMARY KEY,
            person TEXT NOT NULL,
            device TEXT NOT NULL REFERENCES device (id),
            started INTEGER NOT NULL,
            deed INTEGER NOT NULL
        );
        CREATE TABLE used_nonce (
            nonce TEXT NOT NULL PRIMARY KEY,
            until INTEGER NOT NULL
        );
        CREATE TABLE used_confirmation (
            confirmation TEXT NOT NULL PRIMARY KEY,
            entry TEXT NOT NULL
        );
        CREATE TABLE unconfirmed (
            entry TEXT NOT NULL PRIMARY KEY
        );
        CREATE TABLE event (
            number INTEGER PRIMARY KEY AUTOINCREMENT,
            at INTEGER NOT NULL,
            what TEXT NOT NULL,
            person TEXT,
            device TEXT,
            says TEXT NOT NULL,
            chain TEXT NOT NULL
        );
        CREATE TABLE shop_key (
            row INTEGER PRIMARY KEY CHECK (row = 1),
            key BLOB NOT NULL
        );
        CREATE TABLE closed (
            row INTEGER PRIMARY KEY CHECK (row = 1),
            at INTEGER NOT NULL
        );
        """
    );
}
