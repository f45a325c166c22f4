using System.CommandLine;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Serve;
using Witnessmark.Sheets;

namespace Witnessmark.Groups;

/// <summary>Where a command finds a shop: the files that people write in a folder, what servers write there too, or in the store of its group.</summary>
/// <param name="Folder">The folder.</param>
/// <param name="Group">Reads the group's file; null: all is in the folder.</param>
internal sealed record CommandPlace(string Folder, Func<GroupFile>? Group)
{
    /// <summary>As the options say.</summary>
    public static CommandPlace Of(ParseResult parsed, string folder, GroupOption group) =>
        new(folder, parsed.GetResult(group) is null ? null : () => group.Of(parsed)!);

    /// <summary>What a person calls it.</summary>
    public string Called => Group is null ? "this data folder" : "the store of this shop";

    /// <summary>Works in it.</summary>
    /// <exception cref="LedgerUnavailable">The store or its file cannot be used.</exception>
    public T In<T>(Func<ShopPlace, T> work)
    {
        if (Group is null)
        {
            using var place = FolderPlace.Later(new(Folder));
            return work(place);
        }
        try
        {
            var file = Group();
            using var shop = GroupShop.Open(file.Connection, TimeProvider.System);
            return work(new GroupPlace(shop, file.OpensSecrets));
        }
        catch (FormatException wrong)
        {
            throw new LedgerUnavailable(wrong.Message, wrong);
        }
    }

    /// <summary>What its files say, with the figures that were set on a screen; or their mistakes.</summary>
    public (Workbench? Bench, IReadOnlyList<Mistake> Mistakes) Bench(ShopPlace place) =>
        WorkbenchFiles.Read(KeptSheets.Over(new DataFolder(Folder).Workbench(), place.Sheets));
}
