namespace Witnessmark.Client.Parts;

/// <summary>What may be typed into one box.</summary>
/// <param name="Decimals">Most digits after the point; 0 where only whole numbers can be.</param>
/// <param name="DecimalsBecause">Who sets that, as the start of a sentence: <c>Steel rule</c>.</param>
/// <param name="Minus">Whether less than nothing can be.</param>
/// <param name="Digits">Most digits in all.</param>
/// <param name="Plain">A code of digits: no point, no nudges, zeros kept.</param>
public sealed record KeyRules(int Decimals, string DecimalsBecause, bool Minus, int Digits = 7, bool Plain = false);
