using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Serve;

/// <summary>The invented workshop to try the program with.</summary>
public static class DemoShop
{
    /// <summary>Name of the file that marks a data folder as the invented workshop's.</summary>
    public const string FileName = "demo";

    private const string Device = "demo";
    private const string Job = "412";

    /// <summary>Whether a data folder is the invented workshop's.</summary>
    public static bool Is(DataFolder data) => File.Exists(data.In(FileName));

    /// <summary>Copies the files that came with the program into an empty folder; leaves any other alone.</summary>
    public static void Fill(DataFolder data, string program)
    {
        if (!data.IsEmpty)
            return;
        OwnFolder.Make(data.Path);
        File.WriteAllText(data.In(FileName), "Everything in this folder is the invented demo workshop's.\n");
        Copy(Path.Combine(program, "book"), data.In("book"));
        Copy(Path.Combine(program, "demo", "sheets"), data.In("sheets"));
        File.Copy(Path.Combine(program, "demo", "shop.toml"), data.In("shop.toml"));
    }

    /// <summary>Takes the invented campaigns in when no list ever was.</summary>
    public static void FirstCampaigns(DataFolder data, string program, TimeProvider clock)
    {
        if (CampaignStore.OpenIfThere(data.Path) is not null)
            return;
        const string list = "recalls.tsv";
        const string own = "bulletins.toml";
        var folder = Path.Combine(program, "demo", "campaigns");
        var store = CampaignStore.Open(data.Path);
        using (var file = File.OpenRead(Path.Combine(folder, list)))
            store.ImportPublic(file, list, clock.GetUtcNow(), _ => { });
        var (campaigns, _) = OwnListFile.Read(new(own, File.ReadAllText(Path.Combine(folder, own))));
        store.ImportOwn(campaigns, own, clock.GetUtcNow());
    }

    /// <summary>Opens a job for the shop's first machine when nothing has ever been entered.</summary>
    public static void OpenFirstJob(ShopLedger ledger, Workbench bench, TimeProvider clock)
    {
        if (ledger.After(0).Head == 0)
            ledger.Accept(new(Device, 1, [EntryJson.Write(Arrival(bench, clock.GetUtcNow()))]));
    }

    private static Entry Arrival(Workbench bench, DateTimeOffset now)
    {
        var machine = bench.Workshop.Machines.Values.First();
        var sheet =
            bench.Newest(machine.Sheet) ?? throw new InvalidOperationException($"There is no sheet {machine.Sheet}.");
        var purpose = bench.Book.Purposes.Keys.First();
        var draft = new EntryDraft(
            $"{Device}-{Job}",
            bench.Workshop.Id,
            Job,
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                sheet.Id,
                sheet.Revision,
                purpose,
                bench.Plan(purpose, sheet, machine),
                known: machine,
                secondCheck: bench.Workshop.SecondCheck.In(bench.Book)
            ),
            Strikes: null,
            Covers: null,
            now.ToString("O"),
            bench.Workshop.People[0]
        );
        return Entries.Sealed(draft, Device, epoch: 1, seq: 1, devicePrevious: null);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from, "*.toml"))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
    }
}
