namespace Witnessmark.Handbook;

/// <summary>An expected "no": the calculation will not answer, for a reason that a technician understands.</summary>
/// <param name="Key">The name of the reason, for programs.</param>
/// <param name="Because">The reason in a sentence, for people.</param>
public sealed record Refusal(string Key, Sentence Because);

/// <summary>
/// What a calculation answers: a value, a refusal, or a refusal beside the part of the value that still holds.
/// </summary>
/// <typeparam name="T">The value; its parts that do not hold are null.</typeparam>
public readonly record struct Answer<T>
    where T : class
{
    private Answer(T? value, Refusal? refusal)
    {
        Value = value;
        Refusal = refusal;
    }

    /// <summary>The value, or what still holds of it; null when nothing does.</summary>
    public T? Value { get; }

    /// <summary>Why not, or null when the value holds whole.</summary>
    public Refusal? Refusal { get; }

    /// <summary>Whether the value holds whole.</summary>
    public bool Holds => Refusal is null;

    /// <summary>The value of an answer known to hold.</summary>
    /// <exception cref="InvalidOperationException">It was refused.</exception>
    public T Certain => Refusal is null ? Value! : throw new InvalidOperationException(Refusal.Because);

    /// <summary>Nothing but a refusal.</summary>
    public static Answer<T> Refuse(string key, Sentence because) => new(null, new(key, because));

    /// <summary>A refusal beside what still holds.</summary>
    public static Answer<T> Refuse(string key, Sentence because, T still) => new(still, new(key, because));

    /// <summary>The value.</summary>
    public static implicit operator Answer<T>(T value) => new(value, null);
}
