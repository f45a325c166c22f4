using System.Text.Json;
using System.Text.Json.Nodes;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>One calculation of the handbook as the outside sees it.</summary>
/// <param name="Name">The one name, the same everywhere: <c>chain-adjustment</c>.</param>
/// <param name="Group">The chapter it stands in: <c>FinalDrive</c>.</param>
/// <param name="Line">What it does, in one line.</param>
/// <param name="Source">Where the formula is from, in one line.</param>
/// <param name="Page">The class whose documentation is its page.</param>
/// <param name="Takes">Its inputs.</param>
/// <param name="Gives">Its outputs.</param>
/// <param name="Run">Reads the inputs, calculates, writes the outputs.</param>
public sealed record Calculation(
    string Name,
    string Group,
    string Line,
    string Source,
    Type Page,
    IReadOnlyList<Input> Takes,
    IReadOnlyList<Output> Gives,
    Func<Given, Reply> Run
)
{
    /// <summary>Answers one request; a malformed one is a reply too, never an exception.</summary>
    public Reply Ask(JsonElement given)
    {
        try
        {
            return Run(new Given(given, "", Takes));
        }
        catch (MalformedGiven malformed)
        {
            return Reply.Wrong(malformed.Message);
        }
        catch (InvalidOperationException) when (BrokenText.In(given))
        {
            return Reply.Wrong(BrokenText.Complaint);
        }
    }
}

/// <summary>How a calculation replies to a request in JSON.</summary>
/// <param name="Outputs">What it gives, or what still holds beside a refusal; null when the request was malformed.</param>
/// <param name="Refusal">The engineering reason not to answer, or null.</param>
/// <param name="Malformed">What is wrong with the request, or null.</param>
public sealed record Reply(JsonObject? Outputs, Refusal? Refusal, string? Malformed)
{
    /// <summary>The outputs.</summary>
    public static implicit operator Reply(Gives gives) => new(gives.Json, null, null);

    /// <summary>
    /// The outputs; a refusal beside those that still hold; or <c>wrong</c> alone. The one form in which it leaves the program.
    /// </summary>
    public JsonObject ToJson()
    {
        if (Malformed is not null)
            return new() { ["wrong"] = Malformed };
        if (Refusal is null)
            return Outputs!;
        var json = new JsonObject { ["refused"] = Refusal.Key, ["because"] = Refusal.Because.ToString() };
        foreach (var (name, value) in Outputs!)
            json.Add(name, value?.DeepClone());
        return json;
    }

    /// <summary>A malformed request.</summary>
    public static Reply Wrong(string message) => new(null, null, message);

    /// <summary>An answer whose parts that hold are written by <paramref name="write"/>.</summary>
    public static Reply To<T>(Answer<T> answer, Func<T, Gives> write)
        where T : class => new(answer.Value is { } value ? write(value).Json : [], answer.Refusal, null);
}
