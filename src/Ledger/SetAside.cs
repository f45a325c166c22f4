namespace Witnessmark.Ledger;

/// <summary>Why something is set aside.</summary>
public enum AsideReason
{
    /// <summary>Entries before it have not come; it comes in by itself when they do.</summary>
    Waiting,

    /// <summary>It is no entry, or its content does not fit its hash.</summary>
    Damaged,

    /// <summary>Its id or number is held by another entry, or it is bound to one that the shop does not hold.</summary>
    Conflict,
}

/// <summary>Something that came and could not be taken in. It is kept whole, as it came, and reported.</summary>
public sealed class SetAside
{
    public long Number { get; set; }

    /// <summary>As it came.</summary>
    public required string Text { get; set; }

    /// <summary>SHA-256 of the text: the same thing sent again is kept once.</summary>
    public required string TextHash { get; set; }
    public AsideReason Reason { get; set; }

    /// <summary>The reason in a sentence.</summary>
    public required string Why { get; set; }

    /// <summary>As far as it can be read, and so the next four.</summary>
    public string? Id { get; set; }
    public required string Device { get; set; }
    public int Epoch { get; set; }
    public int? Seq { get; set; }

    /// <summary>The hash that it claims.</summary>
    public string? Hash { get; set; }
    public required string Received { get; set; }
}
