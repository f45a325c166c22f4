using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// The campaigns that a shop knows of, in an SQLite file of their own or in the store of its group: they can be imported anew at any time, the ledger cannot.
/// An import is one transaction: a cancelled or broken one leaves everything as it was.
/// </summary>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
public sealed class CampaignStore
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "campaigns.db";

    private readonly KeptRows kept;
    private readonly string? path;

    private CampaignStore(string folder) => kept = File(path = Path.Combine(folder, FileName));

    /// <summary>In the store of a group.</summary>
    internal CampaignStore(KeptRows kept) => this.kept = kept;

    /// <summary>Opens the store in a data folder and brings its tables up to date. Where nothing was ever imported, the first import makes it.</summary>
    public static CampaignStore Open(string folder)
    {
        var store = new CampaignStore(folder);
        if (System.IO.File.Exists(store.path!))
            File(store.path!).Prepare(CampaignSchema.Steps);
        return store;
    }

    /// <summary>The store in a data folder, or null when nothing was ever imported there.</summary>
    public static CampaignStore? OpenIfThere(string folder) =>
        System.IO.File.Exists(Path.Combine(folder, FileName)) ? Open(folder) : null;

    /// <summary>Imports the regulator's public file.</summary>
    /// <param name="rows">The file from its beginning; its length is asked for the progress.</param>
    /// <param name="name">Its name.</param>
    /// <param name="at">Now.</param>
    /// <param name="aside">Gets every row that cannot be read.</param>
    /// <param name="progress">Called every few thousand rows.</param>
    /// <param name="cancel">Stops it and leaves everything as it was.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public ImportTotals ImportPublic(
        Stream rows,
        string name,
        DateTimeOffset at,
        RowAsideTaker aside,
        Action<ImportProgress>? progress = null,
        CancellationToken cancel = default
    ) =>
        Import(
            CampaignSource.Public,
            name,
            at,
            writer => PublicRows.Write(rows, writer, aside, progress ?? (_ => { }), cancel)
        );

    /// <summary>Imports the shop's own list.</summary>
    public ImportTotals ImportOwn(IReadOnlyList<Campaign> campaigns, string name, DateTimeOffset at) =>
        Import(
            CampaignSource.Own,
            name,
            at,
            writer =>
            {
                var digest = new SaysDigest();
                foreach (var campaign in campaigns)
                    writer.Write(campaign, digest.Of(campaign.Says));
                return writer.Finish(campaigns.Count, 0);
            }
        );

    /// <summary>What was imported: of each file the last time. Empty: nothing can be looked up.</summary>
    public IReadOnlyList<ImportedList> Lists() => kept.Look(CampaignLookup.Lists);

    /// <summary>The records of a machine's make, model and year, and those that do not say model or year; none that is withdrawn.</summary>
    public IReadOnlyList<Campaign> Of(AskedMachine machine) => kept.Look(c => CampaignLookup.Of(c, machine).Standing);

    /// <summary>Those that would be among them, had they not been withdrawn.</summary>
    public IReadOnlyList<Campaign> WithdrawnOf(AskedMachine machine) =>
        kept.Look(c => CampaignLookup.Of(c, machine).Withdrawn);

    /// <summary>Takes a campaign of the shop's own lists back. The record of it, and its records, stay.</summary>
    /// <param name="number">Its number; dashes and capitals are no matter.</param>
    /// <param name="because">Why.</param>
    /// <param name="by">Who.</param>
    /// <param name="at">Now.</param>
    public WithdrawOutcome Withdraw(string number, string because, string by, DateTimeOffset at) =>
        kept.Change(c => Withdrawals.Take(c, number, because, by, at));

    /// <summary>All that were ever withdrawn, the first one first.</summary>
    public IReadOnlyList<Withdrawn> WithdrawnSoFar() =>
        kept.Look<IReadOnlyList<Withdrawn>>(c => [.. Withdrawals.All(c).Select(w => w.Withdrawn)]);

    /// <summary>Models of that make whose names begin as the machine's, or are its beginning: perhaps the same machine, called otherwise.</summary>
    public IReadOnlyList<string> Alike(AskedMachine machine) => kept.Look(c => CampaignLookup.Alike(c, machine));

    private ImportTotals Import(
        CampaignSource source,
        string name,
        DateTimeOffset at,
        Func<CampaignWriter, ImportTotals> write
    ) =>
        path is null || System.IO.File.Exists(path)
            ? kept.Change(connection => CampaignImport.Run(connection, source, name, at, write))
            : FirstImport.Run(path, File, connection => CampaignImport.Run(connection, source, name, at, write));

    // the writer gives the numbers itself: nothing has to be watched
    private static KeptFile File(string path) =>
        new(
            path,
            foreignKeys: false,
            connection => connection.Run("PRAGMA cache_size = -49152; PRAGMA synchronous = FULL")
        );
}
