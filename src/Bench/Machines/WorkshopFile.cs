using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Planning;
using Witnessmark.Bench.SecondChecks;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Machines;

/// <summary>The workshop with the tree it was read from.</summary>
internal sealed record WorkshopRead(Workshop Workshop, TomlFile File);

/// <summary>Reads <c>shop.toml</c>.</summary>
internal static class WorkshopFile
{
    /// <summary>ISO 216 A4 and ANSI/ASME Y14.1 size A, the usual one first.</summary>
    internal static readonly string[] Papers = ["A4", "Letter"];

    /// <summary>Labels that shops can buy, the usual one first.</summary>
    internal static readonly string[] Labels = ["A8", "62x29", "70x36", "4x2in"];

    /// <summary>Languages of papers, the usual one first.</summary>
    internal static readonly string[] Languages = [.. Tongue.All.Select(l => l.Code)];

    /// <summary>Systems of units that papers are written in, the usual one first.</summary>
    internal static readonly string[] UnitWords = [.. UnitSystems.Words];

    public static WorkshopRead Read(TomlFile file)
    {
        var head = file.Root.Table("workshop");
        var dates = head.TruthOrNothing("instruments-need-dates") ?? false;
        var workshop = new Workshop(
            head.Text("id"),
            head.Text("name"),
            head.SomeTexts("people"),
            file.Root.Tables("instruments")
                .ToArray()
                .ToDictionary(t => t.Name, t => InstrumentTable.Read(t.Name, t.Table) with { DateNeeded = dates }),
            file.Root.Tables("machines").ToArray().ToDictionary(t => t.Name, t => Machine(t.Name, t.Table))
        )
        {
            Adapters = file
                .Root.Tables("adapters")
                .ToArray()
                .ToDictionary(t => t.Name, t => AdapterTable.Read(t.Name, t.Table)),
            Stock = file
                .Root.Tables("stock")
                .ToArray()
                .ToDictionary(t => t.Name, t => StockTable.Read(t.Name, t.Table)),
            Leads = Leads(head),
            Readers = Readers(head),
            InstrumentsNeedDates = dates,
            SecondCheck = SecondCheckRule.Read(file.Root.TableOrNothing("second-check"), head.Texts("people")),
            ReleaseByTwo = ByTwo(head),
            Jurisdiction = Whose(head),
            Paper = OneOf(head, "paper", Papers),
            Label = OneOf(head, "label", Labels),
            Language = OneOf(head, "language", Languages),
            Units = OneOf(head, "units", UnitWords),
            Planning = PlanningTable.Read(file.Root.TableOrNothing("planning")),
            Estimates = EstimatesTable.Read(file.Root.TableOrNothing("estimates")),
        };
        DoubledVins(file.Root, workshop);
        var hours = TechnicianTable.Opening(file.Root);
        workshop = workshop with
        {
            Hours = hours,
            Lifts = head.Texts("lifts"),
            Technicians = TechnicianTable.All(file.Root, workshop.People, hours),
        };
        head.NoOtherKeys();
        file.Root.NoOtherKeys();
        return new(workshop, file);
    }

    /// <summary>One of a few words, the first where the shop says nothing; the mistake names all of them.</summary>
    private static string OneOf(TomlTable head, string key, string[] words)
    {
        if (head.TextOrNothing(key) is not { Length: > 0 } text)
            return words[0];
        if (!words.Contains(text))
            head.Wrong(key, $"\"{text}\"", string.Join(" or ", words.Select(w => $"\"{w}\"")));
        return text;
    }

    private static IReadOnlyList<string> Leads(TomlTable head)
    {
        var (leads, people) = (head.Texts("leads"), head.Texts("people"));
        foreach (var stranger in leads.Except(people))
            head.Mistakes.Add(
                head.At("leads", stranger),
                $"\"{stranger}\" is not one of the people",
                Nearest.InWords(stranger, people)
            );
        return leads;
    }

    private static IReadOnlyList<string> Readers(TomlTable head)
    {
        var (readers, people) = (head.Texts("readers"), head.Texts("people"));
        foreach (var both in readers.Intersect(people))
            head.Mistakes.Add(
                head.At("readers", both),
                $"\"{both}\" is one of the people too",
                "a name in one of the two lists"
            );
        return readers;
    }

    private static bool ByTwo(TomlTable head)
    {
        if (head.TruthOrNothing("release-by-two") is not true)
            return false;
        if (head.Texts("people").Count < 2)
            head.Wrong("release-by-two", "true", "two people at least in \"people\"");
        return true;
    }

    private static Jurisdiction? Whose(TomlTable head)
    {
        if (head.TextOrNothing("jurisdiction") is not { } written)
            return null;
        if (Jurisdiction.Read(written) is not { } read)
        {
            head.Wrong("jurisdiction", $"\"{written}\"", Jurisdiction.Right);
            return null;
        }
        return read;
    }

    private static Machine Machine(string id, TomlTable table)
    {
        var distance = table.QuantityOrNothing("last-distance", Dimension.Length);
        var machine = new Machine(
            id,
            table.Text("name"),
            Vin(table),
            table.WholeOrNothing("year", 1885, 2100),
            table.Text("sheet"),
            distance?.In(UnitTable.Named("km")).Value,
            table.DayOrNothing("last-distance-on"),
            MachineFacts.ReadTraits(table.TableOrNothing("facts")),
            table.TextOrNothing("make"),
            Plate: table.TextOrNothing("plate")
        );
        if (distance is { Value: < 0 })
            table.Wrong("last-distance", $"\"{distance}\"", "zero or more");
        if (distance is null != machine.LastDistanceOn is null && !table.Has("last-distance-on"))
            table.Wrong("last-distance", "a distance without its day", "last-distance-on = 2026-03-31 beside it");
        table.NoOtherKeys();
        return machine;
    }

    /// <summary>Only what ISO 3779 says for all the world: 17 signs, no I, O or Q. The check digit is North American law.</summary>
    private static string Vin(TomlTable table)
    {
        // a machine is known by the one or the other
        var vin = table.Has("plate") ? table.TextOrNothing("vin") ?? "" : table.Text("vin");
        if (
            vin.Length > 0
            && (
                vin.Length != 17
                || !vin.All(c => char.IsAsciiDigit(c) || (char.IsAsciiLetterUpper(c) && c is not ('I' or 'O' or 'Q')))
            )
        )
            table.Wrong("vin", $"\"{vin}\" ({vin.Length} signs)", "17 digits and capital letters without I, O and Q");
        return vin;
    }

    private static void DoubledVins(TomlTable root, Workshop workshop)
    {
        foreach (
            var same in workshop
                .Machines.Values.Where(m => m.Vin.Length > 0)
                .GroupBy(m => m.Vin)
                .Where(g => g.Count() > 1)
        )
        foreach (var machine in same.Skip(1))
            root.Table("machines")
                .Table(machine.Id)
                .Wrong("vin", $"the number of \"{same.First().Id}\" too", "one machine for each number");
    }
}
