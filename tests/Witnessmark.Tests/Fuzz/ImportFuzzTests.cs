using System.Text;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Machines;
using Witnessmark.Machines;
using Witnessmark.Tests.Serve;
using Witnessmark.Verify;

namespace Witnessmark.Tests.Fuzz;

/// <summary>Lists, sheets and log books that are spoilt: each is read, or said to be wrong in a sentence, and what was kept before stays.</summary>
public sealed class ImportFuzzTests : IDisposable
{
    private const int Seed = 20261201;
    private static readonly DateOnly Day = new(2026, 11, 29);
    private static readonly string Program = AppContext.BaseDirectory;

    private static readonly byte[] Machines = Encoding.UTF8.GetBytes(
        """"
        id,vin,plate,name,distance-km,distance-on,owner
        17,GZ0FE64C8RH000412,HL 412,Fell 640,11840,2026-04-22,Ann Other
        18,GZ0FE64C5PH000977,"HL ""977""",Fell 640,23310,2025-10-02,"Cy Marsh, the younger"
        """"
    );

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_list_of_machines_is_taken_in_whole_or_not_at_all()
    {
        var ends = new Dictionary<string, int>();
        var register = MachineRegister.Open(folder.Path);
        var spoil = new Mutations(Seed);
        for (var i = 0; i < Tries.Of(300); i++)
        {
            var before = register.Machine("17");
            var taken = TakeIn(register, spoil.Of(Machines));
            Count(ends, taken ? "taken in" : "refused");
            if (!taken)
                Assert.Equal(before?.ToString(), register.Machine("17")?.ToString());
        }
        Tries.Tell("lists of machines", Seed, ends);
        Assert.Equal(2, ends.Count);
    }

    [Fact]
    public void A_public_list_of_campaigns_is_taken_in_row_by_row()
    {
        var ends = new Dictionary<string, int>();
        var store = CampaignStore.Open(folder.Path);
        var list = File.ReadAllBytes(Path.Combine(Program, "demo", "campaigns", "recalls.tsv"));
        var spoil = new Mutations(Seed);
        for (var i = 0; i < Tries.Of(150); i++)
        {
            var aside = 0;
            var totals = store.ImportPublic(
                new MemoryStream(spoil.Of(list)),
                "spoilt.tsv",
                DateTimeOffset.UnixEpoch,
                _ => aside++,
                cancel: TestContext.Current.CancellationToken
            );
            Assert.Equal(aside, totals.SetAside);
            Assert.Equal(
                totals.Rows,
                totals.New + totals.Updated + totals.Unchanged + totals.Duplicates + totals.SetAside
            );
            Count(ends, aside > 0 ? "rows set aside" : "whole");
        }
        Tries.Tell("public lists", Seed, ends);
        Assert.Equal(2, ends.Count);
    }

    [Fact]
    public void A_shops_own_list_and_its_sheets_are_read_or_every_mistake_is_told()
    {
        var ends = new Dictionary<string, int>();
        var own = File.ReadAllBytes(Path.Combine(Program, "demo", "campaigns", "bulletins.toml"));
        var shop = Workbench();
        var spoil = new Mutations(Seed);
        for (var i = 0; i < Tries.Of(60); i++)
        {
            var (_, mistakes) = OwnListFile.Read(new("bulletins.toml", Text(spoil.Of(own))));
            Count(ends, mistakes.Count == 0 ? "list read" : "list refused");
            var at = i % shop.Length;
            SourceText[] spoilt = [.. shop];
            spoilt[at] = new(shop[at].Name, Text(spoil.Of(Encoding.UTF8.GetBytes(shop[at].Text))));
            var (bench, wrong) = WorkbenchFiles.Read(spoilt);
            Assert.Equal(bench is null, wrong.Count > 0);
            Count(ends, bench is null ? "shop refused" : "shop read");
        }
        Tries.Tell("files of a shop", Seed, ends);
    }

    [Fact]
    public void A_log_book_is_intact_or_said_not_to_be()
    {
        var ends = new Dictionary<string, int>();
        var page = File.ReadAllText(Path.Combine(Program, "Guides", "log-book.md"));
        var from = page.IndexOf("```json\n", StringComparison.Ordinal) + "```json\n".Length;
        var whole = Encoding.UTF8.GetBytes(page[from..page.IndexOf("```", from, StringComparison.Ordinal)]);
        var file = new FileInfo(Path.Combine(folder.Path, "book.json"));
        var spoil = new Mutations(Seed);
        for (var i = 0; i < Tries.Of(400); i++)
        {
            var spoilt = spoil.Of(whole);
            File.WriteAllBytes(file.FullName, spoilt);
            var code = VerifyLogBook.Run(file, null, null, TextWriter.Null, TextWriter.Null, json: true);
            Assert.InRange(code, 0, 3);
            Count(ends, $"ends with {code}");
        }
        Tries.Tell("log books", Seed, ends);
        Assert.True(ends.Count > 1);
    }

    private static bool TakeIn(MachineRegister register, byte[] list)
    {
        try
        {
            using var csv = new CsvList(CsvList.Text(new MemoryStream(list)));
            var (columns, _) = RegisterColumns.ByName(csv.Head);
            if (columns is null)
                return false;
            register.Import(csv.Rows().Select(r => Row(r, columns)), _ => { }, TestContext.Current.CancellationToken);
            return true;
        }
        catch (Exception wrong) when (wrong is InvalidDataException or DecoderFallbackException)
        {
            return false; // what the command says in a sentence
        }
    }

    private static RowToImport Row(CsvRow csv, RegisterColumns columns)
    {
        var (row, why) = csv.Torn ? (null, "torn") : RegisterRow.Read(columns, csv.Fields, Day);
        return new(csv.Line, row, why, csv.Raw);
    }

    private static SourceText[] Workbench() =>
        [
            new("shop.toml", File.ReadAllText(Path.Combine(Program, "demo", "shop.toml"))),
            .. Files(Path.Combine(Program, "demo", "sheets"), "sheets"),
            .. Files(Path.Combine(Program, "book"), "book"),
        ];

    private static IEnumerable<SourceText> Files(string from, string name) =>
        Directory
            .GetFiles(from, "*.toml")
            .Order(StringComparer.Ordinal)
            .Select(f => new SourceText($"{name}/{Path.GetFileName(f)}", File.ReadAllText(f)));

    private static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);

    private static void Count(Dictionary<string, int> ends, string end) => ends[end] = ends.GetValueOrDefault(end) + 1;
}
