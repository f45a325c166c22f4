namespace Witnessmark.Doors;

/// <summary>How long a person waits after wrong secrets.</summary>
/// <remarks>
/// <b>Source.</b> NIST SP 800-63B-4, 3.2.2: not more than 100 wrong ones in a row, with rising waits. Here it is ten, for there are only
/// a million secrets of six digits: whoever guesses has a chance of 1 in 100,000 before the door is shut to that name.
/// </remarks>
public static class Waits
{
    /// <summary>So many wrong ones in a row shut the door to a name.</summary>
    public const int Most = 10;

    private static readonly TimeSpan[] Rising =
    [
        TimeSpan.Zero,
        TimeSpan.Zero,
        TimeSpan.FromSeconds(5),
        TimeSpan.FromSeconds(15),
        TimeSpan.FromMinutes(1),
        TimeSpan.FromMinutes(5),
        TimeSpan.FromMinutes(15),
        TimeSpan.FromMinutes(30),
        TimeSpan.FromHours(1),
    ];

    /// <summary>After so many wrong ones in a row; null when the door is shut.</summary>
    public static TimeSpan? After(int failures) => failures >= Most ? null : Rising[failures - 1];
}
