using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

/// <summary>How long somebody stays signed in.</summary>
/// <remarks>
/// Common practice, no source: a tablet that lies about in a workshop asks again after a quarter of an hour without a deed, a device of one's own after
/// eight hours; and both each day. What the program fetches by itself is no deed.
/// </remarks>
public static class SessionLife
{
    /// <summary>Without a deed, on a device that several people work with.</summary>
    public static readonly TimeSpan IdleShared = TimeSpan.FromMinutes(15);

    /// <summary>Without a deed, on a device of one's own.</summary>
    public static readonly TimeSpan IdleOwn = TimeSpan.FromHours(8);

    /// <summary>Whatever is done meanwhile, on a shared device.</summary>
    public static readonly TimeSpan WholeShared = TimeSpan.FromHours(12);

    /// <summary>Whatever is done meanwhile, on a device of one's own.</summary>
    public static readonly TimeSpan WholeOwn = TimeSpan.FromHours(24);

    /// <summary>When a session ends unless something is done.</summary>
    public static DateTimeOffset End(KeptSession session, bool shared)
    {
        var idle = session.Deed + (shared ? IdleShared : IdleOwn);
        var whole = session.Started + (shared ? WholeShared : WholeOwn);
        return idle < whole ? idle : whole;
    }
}
