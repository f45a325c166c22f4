using System.Data.Common;
using Npgsql;
using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Ledger.Machines;

/// <summary>The register's rows as an import meets them, one machine after the other.</summary>
internal abstract class RegisterRows : IDisposable
{
    /// <summary>As the database wants it: a file statement by statement, which is quickest there; over a line many machines at once.</summary>
    /// <param name="connection">Within the transaction of the import; nothing else is asked of it until it is finished.</param>
    public static RegisterRows On(DbConnection connection) =>
        connection is NpgsqlConnection store ? new MachinesAhead(store) : new RegisterStatements(connection);

    /// <summary>These come next.</summary>
    public virtual void Expect(IReadOnlyList<RegisterRow> rows) { }

    /// <summary>Which machine has the number; null: none.</summary>
    public abstract string? IdOf(string vin);

    /// <summary>A machine that is there, and what it is known by here.</summary>
    public abstract (long Key, MachineSays Says)? Find(string id);

    /// <summary>A machine that was not there; what it is known by here.</summary>
    public abstract long Add(string id, MachineSays says);

    /// <summary>A machine says something else.</summary>
    public abstract void Change(long key, string id, MachineSays says);

    /// <summary>A distance of a machine; false when it is there already.</summary>
    public abstract bool Add(long key, DistanceOnDay distance);

    /// <summary>Who brings a machine; null: nobody is on record.</summary>
    public abstract MachineOwner? OwnerOf(long key);

    /// <summary>Somebody else brings it than before.</summary>
    public abstract void Change(long key, MachineOwner? before, MachineOwner owner);

    /// <summary>Writes what still waits.</summary>
    public abstract void Finish();

    /// <inheritdoc />
    public abstract void Dispose();
}
