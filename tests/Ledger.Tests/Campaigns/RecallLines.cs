using System.Text;

namespace Witnessmark.Ledger.Tests.Campaigns;

/// <summary>Rows of the public file as text.</summary>
internal static class RecallLines
{
    public static string Row(
        string number = "26X-004",
        string make = "TARNMOOR",
        string model = "FELL 640",
        string year = "2024",
        string part = "FUEL TANK",
        string defect = "It leaks.",
        string ride = "No",
        string recorded = "20260610",
        string record = "1",
        string component = "",
        int fields = 29
    ) =>
        string.Join(
            '\t',
            new[]
            {
                record,
                number,
                make,
                model,
                year,
                "",
                part,
                "Works",
                "",
                "",
                "V",
                "",
                "",
                "MFR",
                "Works",
                recorded,
                "",
                "",
                "",
                defect,
                "It burns.",
                "Replace it.",
                "",
                component,
                "",
                "",
                "",
                ride,
                "No",
            }.Take(fields)
        );

    /// <summary>Invented rows of every kind.</summary>
    public static string[] Lines(int seed, int rows)
    {
        using var file = new MemoryStream();
        new InventedRecalls(seed).Write(file, rows);
        return Encoding.Latin1.GetString(file.ToArray()).TrimEnd('\n').Split('\n');
    }

    /// <summary>Few keys, several spellings, texts, flags and days for each.</summary>
    public static string[] Contradicting(Random chance) =>
        [
            .. Enumerable
                .Range(0, 30)
                .Select(_ =>
                    Row(
                        number: $"26X-{chance.Next(3)}",
                        model: new[] { "FELL 640", "Fell-640", "fell640" }[chance.Next(3)],
                        defect: $"text {chance.Next(4)}",
                        ride: chance.Next(5) == 0 ? "Yes" : "No",
                        recorded: chance.Next(3) == 0 ? "19010101" : $"2026010{chance.Next(1, 4)}"
                    )
                ),
        ];
}
