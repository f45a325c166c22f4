using System.Globalization;
using System.Text;

namespace Witnessmark.Ledger.Tests.Campaigns;

/// <summary>Writes an invented list in the layout of the public recall file, with the quirks that such a file is known for.</summary>
internal sealed class InventedRecalls(int seed)
{
    // one row in so many; byte-for-byte doubles make up about 0.7 % of the public file
    private const int Doubled = 143;
    private const int Windows1252 = 50;
    private const int Latin1 = 1000;

    private static readonly string[] Makes =
    [
        "TARNMOOR",
        "Gritstone",
        "OX & LARCH",
        "Windlow",
        "Sedgeback",
        "Kelddale",
    ];
    private static readonly string[] Parts =
    [
        "FUEL TANK",
        "FRONT BRAKE:HOSE",
        "STEERING STEM",
        "WIRING LOOM",
        "SIDE STAND",
        "REAR WHEEL",
    ];
    private static readonly string[] Nouns =
    [
        "hose",
        "bolt",
        "clip",
        "seal",
        "lamp",
        "spoke",
        "lever",
        "pipe",
        "loom",
        "bracket",
    ];
    private static readonly string[] Verbs =
    [
        "may leak",
        "may come loose",
        "may crack",
        "may wear early",
        "was not tightened",
        "may chafe",
    ];
    private readonly Random chance = new(seed);

    /// <summary>Rows of campaigns with one to twenty models and years each, their long texts the same, one after the other.</summary>
    public void Write(Stream to, int rows)
    {
        for (var (written, campaign) = (0, 1); written < rows; campaign++)
        {
            var texts = Texts();
            var number = string.Create(CultureInfo.InvariantCulture, $"{10 + campaign % 17}X{campaign:000000}");
            for (var machine = chance.Next(1, 20); machine > 0 && written < rows; machine--)
            {
                var row = Row(written + 1, number, texts);
                for (var copy = chance.Next(Doubled) == 0 ? 2 : 1; copy > 0 && written < rows; copy--, written++)
                    to.Write(row);
            }
        }
    }

    private byte[] Row(int record, string number, string[] texts)
    {
        var make = Makes[chance.Next(Makes.Length)];
        string[] fields =
        [
            record.ToString(CultureInfo.InvariantCulture),
            number,
            make,
            string.Create(CultureInfo.InvariantCulture, $"{make[..2].ToUpperInvariant()} {chance.Next(50, 130) * 10}"),
            chance.Next(200) == 0 ? "9999" : chance.Next(1990, 2027).ToString(CultureInfo.InvariantCulture),
            "",
            texts[0],
            $"{make} WORKS",
            "19010101",
            "20240131",
            "V",
            "1200",
            "20260215",
            "MFR",
            $"{make} WORKS",
            "20260201",
            "20260203",
            "",
            "",
            texts[1],
            texts[2],
            texts[3],
            texts[4],
            texts[5],
            "",
            "",
            "",
            chance.Next(500) == 0 ? "Yes" : "No",
            "No",
        ];
        var line = string.Join('\t', fields) + (chance.Next(4) == 0 ? "\r\n" : "\n");
        var encoding =
            chance.Next(Latin1) == 0
                ? (line = line.Replace("maker", "mak\u0081r \u00e9")) is var _
                    ? Encoding.Latin1
                    : null!
                : chance.Next(Windows1252) == 0
                    ? (line = line.Replace("maker", "mak\u00e9r")) is var _
                        ? Encoding.Latin1
                        : null!
                    : Encoding.UTF8;
        return encoding.GetBytes(line);
    }

    private string[] Texts() =>
        [
            Parts[chance.Next(Parts.Length)],
            Sentences(2, 5),
            Sentences(1, 3),
            Sentences(2, 5),
            Sentences(1, 3),
            chance.NextInt64(100_000_000_000, 999_999_999_999).ToString(CultureInfo.InvariantCulture),
        ];

    private string Sentences(int least, int most)
    {
        var text = new StringBuilder();
        for (var i = chance.Next(least, most + 1); i > 0; i--)
            text.Append(
                    CultureInfo.InvariantCulture,
                    $"On machines of lot {chance.Next(10_000)} the {Nouns[chance.Next(10)]} "
                )
                .Append(
                    CultureInfo.InvariantCulture,
                    $"by the {Nouns[chance.Next(10)]} {Verbs[chance.Next(6)]}, the maker says. "
                );
        return text.ToString().TrimEnd();
    }
}
