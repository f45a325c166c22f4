namespace Witnessmark.Calc;

/// <summary>How <c>calc</c> ends, for programs that call it.</summary>
public static class ExitCode
{
    /// <summary>Answered; all cases as expected.</summary>
    public const int Ok = 0;

    /// <summary>A check case differs.</summary>
    public const int Differs = 1;

    /// <summary>The request or the file is not of the contract's form.</summary>
    public const int Malformed = 2;

    /// <summary>The calculation will not answer, for an engineering reason.</summary>
    public const int Refused = 3;
}
