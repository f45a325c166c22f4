namespace Witnessmark.Doors;

/// <summary>What the door says: something, or no.</summary>
/// <typeparam name="T">What is said when it is yes.</typeparam>
/// <param name="Yes">The answer.</param>
/// <param name="No">Why not, in a sentence.</param>
/// <param name="Status">Of the reply over HTTP.</param>
public sealed record Answered<T>(T? Yes, Sentence? No, int Status)
    where T : class
{
    public static implicit operator Answered<T>(T yes) => new(yes, null, 200);

    /// <summary>No.</summary>
    public static Answered<T> Because(Sentence why, int status = 403) => new(null, why, status);
}

/// <summary>Somebody came in.</summary>
/// <param name="Token">Of the session; only the cookie has it.</param>
/// <param name="You">Who.</param>
public sealed record CameIn(string Token, SignedIn You);

/// <summary>Somebody who is in.</summary>
/// <param name="Person">Who.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Device">Where.</param>
/// <param name="Until">When the door asks again unless something is done.</param>
/// <param name="Since">When they signed in.</param>
public sealed record SignedIn(string Person, Role Role, string Device, DateTimeOffset Until, DateTimeOffset Since);
