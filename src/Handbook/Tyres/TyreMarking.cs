using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Tyres;

/// <summary>What the size and the letters on a metric motorcycle tyre say: width, diameter, load and speed.</summary>
/// <remarks>
/// <para><b>Formula.</b> Width / aspect, construction, rim code, load index, speed symbol: <c>180/55 ZR 17 M/C (73W)</c>. Height of the
/// section H = width·aspect; overall diameter D = d + 2·H with d the nominal rim diameter of the code.</para>
/// <para><b>Units.</b> Width and diameters in mm, aspect in %, load in kg on one tyre, speed in km/h.</para>
/// <para><b>Source.</b> UNECE R75: definitions (designation, rim diameters, speed symbols), annex 4 (load index); D = d + 2·H of its design
/// dimensions. Clauses not opened; the tables say row by row what was read and what is from memory.</para>
/// <para><b>Valid when</b> the marking is metric. D is the design diameter: a tyre that is fitted, worn or spinning differs by some
/// per cent. d is R75's whole millimetres (code 17: 432), not 25.4 times the code (431.8).</para>
/// </remarks>
public static partial class TyreMarking
{
    private static readonly Dictionary<int, Mass> Loads = PublishedTable
        .Read("load-index.csv")
        .Rows.ToDictionary(r => (int)r.Number("index"), r => new Mass(r.Number("mass") * GramsPerKilogram));

    private static readonly Dictionary<string, Speed> Speeds = PublishedTable
        .Read("speed-symbols.csv")
        .Rows.ToDictionary(r => r["symbol"], r => new Speed(r.Number("speed")));

    private static readonly Dictionary<int, Length> Rims = PublishedTable
        .Read("rim-diameters.csv")
        .Rows.ToDictionary(r => (int)r.Number("code"), r => new Length(r.Number("diameter")));

    private const double GramsPerKilogram = 1000;

    // R75: the suffix M/C tells motorcycle rims from car rims, which begin at this code
    private const int FirstCodeOfCarRims = 13;

    /// <summary>Reads a marking; letters may be small, blanks may be left out or put in between the parts.</summary>
    /// <param name="marking">As moulded on the side wall, from the width to the speed symbol.</param>
    /// <returns>Refused as <c>notMetric</c>, or as <c>outsideTable</c> beside what still holds.</returns>
    public static Answer<MarkedTyre> Read(string marking)
    {
        if (Metric().Match(marking) is not { Success: true } match)
            return Answer<MarkedTyre>.Refuse("notMetric", WhyNotMetric(marking));
        var rim = Number(match, "rim");
        var width = new Length(Number(match, "width"));
        var aspect = new Ratio(Number(match, "aspect") / 100.0);
        var inSize = Letter(match, "inSize");
        var symbol = Letter(match, "speed") ?? inSize;
        int? index = match.Groups["load"].Success ? Number(match, "load") : null;
        var tyre = new MarkedTyre(width, aspect, Construction(match), rim)
        {
            RimDiameter = Rims.TryGetValue(rim, out var d) ? d : null,
            LoadIndex = index,
            Load = index is { } i && Loads.TryGetValue(i, out var load) ? load : null,
            SpeedSymbol = symbol,
            Speed = symbol is not null && Speeds.TryGetValue(symbol, out var speed) ? speed : null,
            Note = Notes(match, rim, inSize, symbol),
        };
        return Missing(tyre) is { } missing ? Answer<MarkedTyre>.Refuse("outsideTable", missing, tyre) : tyre;
    }

    private static Sentence? Missing(MarkedTyre tyre) =>
        tyre.RimDiameter is null
            ? (Sentence)
                $"No rim of code {tyre.RimCode} is in the table ({Rims.Keys.Min()} to {Rims.Keys.Max()}): read the marking again."
        : tyre.LoadIndex is not null && tyre.Load is null
            ? (Sentence)
                $"Load index {tyre.LoadIndex} is not in the table ({Loads.Keys.Min()} to {Loads.Keys.Max()}): read the marking again."
        : tyre is { SpeedSymbol: not (null or "Z"), Speed: null }
            ? (Sentence)$"{tyre.SpeedSymbol} is no speed symbol of the table: read the marking again."
        : null;

    private static Sentence? Notes(Match match, int rim, string? inSize, string? symbol)
    {
        var notes = new List<Sentence>();
        if (match.Groups["open"].Success)
            notes.Add($"In brackets: made for more than this speed; its maker says for how much more.");
        else if (symbol == "Z")
            notes.Add($"Z alone: made for more than 240 km/h; its maker says for how much more and for what load.");
        if (inSize is not null && inSize != symbol && !IsAbove240(inSize, symbol))
            notes.Add($"The size says {inSize}, the letter at the end {symbol}: read the marking again.");
        if (rim >= FirstCodeOfCarRims && !match.Groups["mc"].Success)
            notes.Add(
                $"No M/C: from rim code 13 on a motorcycle's tyre carries it. Make sure that this is no car tyre."
            );
        return notes.Count == 0 ? null : Sentence.List(notes, " ");
    }

    // Z in the size goes with V, W or Y at the end; with a slower letter it contradicts
    private static bool IsAbove240(string inSize, string? symbol) =>
        inSize == "Z" && symbol is not null && Speeds.TryGetValue(symbol, out var speed) && speed >= Speeds["V"];

    private static TyreConstruction Construction(Match match) =>
        Letter(match, "construction") switch
        {
            "R" => TyreConstruction.Radial,
            "B" => TyreConstruction.BeltedBias,
            _ => TyreConstruction.Bias,
        };

    private static Sentence WhyNotMetric(string marking) =>
        InchSize().IsMatch(marking)
            ? (Sentence)
                $"This is a size in inches: it gives no aspect and no whole table to reckon with. Its maker's data sheet gives the dimensions."
        : LetterSize().IsMatch(marking)
            ? (Sentence)
                $"This is a size in letters: its dimensions stand in a table of their own. Its maker's data sheet gives them."
        : (Sentence)
            $"This is no metric marking such as 180/55 ZR 17 M/C (73W): copy it from the side wall, from the width to the speed symbol.";

    private static int Number(Match match, string group) =>
        int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    private static string? Letter(Match match, string group) =>
        match.Groups[group] is { Success: true } found ? found.Value.ToUpperInvariant() : null;

    // The construction letters R and B are speed symbols too: one that stands alone is the construction, hence the lazy inSize.
    [GeneratedRegex(
        """
            \A \s* (?<width>[1-9][0-9]{1,2}) \s* / \s* (?<aspect>[1-9][0-9]|1[0-9][0-9]) (?![0-9])
            \s* -? \s* (?<inSize>[A-Za-z])?? \s* (?<construction>[RrBbDd])? \s* -? \s* (?<rim>[1-9][0-9]?)
            (?: \s* (?<mc>[Mm]/?[Cc]) )?
            (?: \s* (?<open>\()? (?<![0-9]) \s* (?<load>[0-9]{1,3}) \s* (?<speed>[A-Za-z]) (?(open) \s* \)) (?![A-Za-z]) )?
            (?: \s* (?<mc>[Mm]/?[Cc]) )?
            (?: \s+ (?i: TL | TT | tubeless | reinf | reinforced | RFD | front | rear | M\+S ) )* \s* \z
            """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Metric();

    [GeneratedRegex(@"\A\s*[0-9]{1,2}(\s*([.,][0-9]|[¼½¾]|[xX×-])|\s+[0-9]/[0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex InchSize();

    [GeneratedRegex(@"\A\s*M[A-Z][0-9]{2}", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LetterSize();
}

/// <summary>How the cords of a tyre lie.</summary>
public enum TyreConstruction
{
    /// <summary>Crosswise; no letter, a dash or D.</summary>
    Bias,

    /// <summary>Crosswise under a belt; letter B.</summary>
    BeltedBias,

    /// <summary>From bead to bead under a belt; letter R.</summary>
    Radial,
}

/// <summary>What a marking says; what it lacks is null.</summary>
/// <param name="Width">Nominal width of the section.</param>
/// <param name="Aspect">Height of the section over its width.</param>
/// <param name="Construction">How the cords lie.</param>
/// <param name="RimCode">Nominal diameter of the rim, as marked.</param>
public sealed record MarkedTyre(Length Width, Ratio Aspect, TyreConstruction Construction, int RimCode)
{
    /// <summary>Nominal diameter of the rim, or null when the code is not in the table.</summary>
    public Length? RimDiameter { get; init; }

    /// <summary>Rim diameter and two heights of the section.</summary>
    public Length? OverallDiameter => RimDiameter is { } d ? d + 2 * Aspect.Value * Width : null;

    /// <summary>As marked.</summary>
    public int? LoadIndex { get; init; }

    /// <summary>Largest mass on the tyre.</summary>
    public Mass? Load { get; init; }

    /// <summary>As marked at the end, else in the size; Z where nothing but that says more.</summary>
    public string? SpeedSymbol { get; init; }

    /// <summary>The speed of the symbol; none for Z alone.</summary>
    public Speed? Speed { get; init; }

    /// <summary>What to mind about the marking.</summary>
    public Sentence? Note { get; init; }
}
