using System.Data.Common;

namespace Witnessmark.Ledger;

/// <summary>Rows of one kind, such as those of the door: in a file of their own beside the ledger, or in the store of a group of shops.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions: what was asked has not happened.</exception>
internal abstract class KeptRows
{
    /// <summary>Looks and changes in one transaction while nobody else changes: when this returns all of it is kept.</summary>
    public abstract T Change<T>(Func<DbConnection, T> change);

    /// <summary>Only looks: waits for nobody who writes.</summary>
    public abstract T Look<T>(Func<DbConnection, T> look);
}
