using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Benchmarks;

/// <summary>
/// Finding a machine among 200 000 invented ones by four signs of VIN, plate or owner: allowed are 50 ms. Beside it a plain
/// <c>LIKE</c> scan over the same texts that also stops at the first 51.
/// </summary>
internal static class MachineTimes
{
    private const int Machines = 200_000;
    private const string Letters = "ABCDEFGHJKLMNPRSTUVWXYZ";

    public static void Print()
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-machines-").FullName;
        try
        {
            var register = MachineRegister.Open(folder);
            var chance = new Random(1);
            var rows = Enumerable.Range(0, Machines).Select(i => Row(i, chance)).ToArray();
            var import = Watch.Once(() => register.Import(rows, _ => { }));
            Console.WriteLine($"import of {Machines} rows: {import / 1000:0.0} s");
            Console.WriteLine("asked                  found   ours ms   LIKE ms   times");
            using var plain = new SqliteConnection($"Data Source={Path.Combine(folder, MachineRegister.FileName)}");
            plain.Open();
            // in every VIN, in no text at all, a serial number, a plate, an owner, a model, words that only together tell
            var plate = rows[777].Row!.Plate!;
            foreach (var text in (string[])["GZ0F", "ZQZQ", "7341", plate, "OWNER99", "0FE6", "Fell 640", "fell 7341"])
                Line(register, plain, text);
            Typed(folder, rows, chance);
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Line(MachineRegister register, SqliteConnection plain, string text)
    {
        var found = register.Find(text)!.Machines.Count;
        var ours = Watch.Median(21, () => register.Find(text));
        var scan = Watch.Median(5, () => Scan(plain, text.Replace("-", "")));
        Console.WriteLine($"{text, -22} {found, 5} {ours, 9:0.00} {scan, 9:0.00} {scan / ours, 7:0.0}");
    }

    // As the server is asked: the register opened for each keystroke, of every text the first three signs, then four, and so on.
    private static void Typed(string folder, RowToImport[] rows, Random chance)
    {
        List<double> times = [];
        for (var i = 0; i < 60; i++)
        {
            var row = rows[chance.Next(rows.Length)].Row!;
            foreach (
                var text in (string[])[row.Vin![^6..], row.Vin, row.Plate!, row.Owner!.Name, $"{row.Name} {row.Plate}"]
            )
                for (var length = 3; length <= text.Length; length++)
                    times.Add(Watch.Once(() => MachineRegister.OpenIfThere(folder)!.Find(text[..length])));
        }
        times.Sort();
        Console.WriteLine(
            $"{times.Count} keystrokes: median {times[times.Count / 2]:0.0} ms, p95 {times[times.Count * 95 / 100]:0.0} ms, most {times[^1]:0.0} ms"
        );
    }

    private static void Scan(SqliteConnection plain, string text)
    {
        using var command = plain.CreateCommand();
        command.CommandText = """
            SELECT m.row FROM machine m LEFT JOIN owner o ON o.machine = m.row
            WHERE m.vin LIKE $text OR replace(m.plate, '-', '') LIKE $text OR replace(o.name, ' ', '') LIKE $text LIMIT 51
            """;
        command.Parameters.AddWithValue("$text", $"%{text}%");
        using var row = command.ExecuteReader();
        while (row.Read()) { }
    }

    private static RowToImport Row(int number, Random chance)
    {
        var plate = $"{Two(chance)}-{chance.Next(10, 99)}-{Two(chance)}{Two(chance)}";
        var row = new RegisterRow(
            $"m-{number}",
            $"GZ0FE64C8RH{number:000000}",
            null,
            plate,
            "Tarnmoor",
            "Fell 640",
            2024,
            null,
            new(new(2026, 1, 1), chance.Next(90_000)),
            new($"Owner {number} {Two(chance)}", $"0555 {number:000000}")
        );
        return new(number + 2, row, null, "");
    }

    private static string Two(Random chance) =>
        $"{Letters[chance.Next(Letters.Length)]}{Letters[chance.Next(Letters.Length)]}";
}
