namespace Witnessmark.Paper.Drawings;

/// <summary>How large the parts of a rule are.</summary>
/// <param name="Width">Of the surface.</param>
/// <param name="Height">Of the surface.</param>
/// <param name="NeedleTop">Where needles begin.</param>
/// <param name="Top">Upper edge of the metal.</param>
/// <param name="Bottom">Lower edge of the metal.</param>
/// <param name="Line">Width of the needle; other lines follow it.</param>
/// <param name="Tick">Height of a great tick.</param>
/// <param name="FinestTick">Ticks stand no closer than this.</param>
/// <param name="NumberRoom">Great ticks stand no closer than this.</param>
/// <param name="Text">Size of the numbers under the metal.</param>
/// <param name="NeedleText">Size of the number over the needle; zero: none is written.</param>
/// <param name="Radius">Of the corners.</param>
public sealed record RuleSize(
    double Width,
    double Height,
    double NeedleTop,
    double Top,
    double Bottom,
    double Line,
    double Tick,
    double FinestTick,
    double NumberRoom,
    double Text,
    double NeedleText,
    double Radius
)
{
    /// <summary>For a screen, with all numbers.</summary>
    public static RuleSize Screen { get; } = new(354, 86, 20, 28, 65, 3, 13, 5, 48, 13, 16, 4);

    /// <summary>For a row on paper, with the ends of the limit only; the readings stand beside it.</summary>
    public static RuleSize Row { get; } = new(100, 27, 1, 5, 18, 1.8, 5.5, 3.2, 22, 7, 0, 1.5);
}
