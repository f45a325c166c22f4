using System.Text;
using System.Text.Json.Nodes;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>Requests that somebody got wrong: whole ones with a few of their parts changed, or with bytes of noise in them.</summary>
public sealed class BrokenRequests(IReadOnlyList<(string Calculation, string Given)> whole, int seed)
{
    private static readonly string[] Texts =
    [
        "",
        " ",
        "0 mm",
        "-1 mm",
        "NaN mm",
        "1e308 mm",
        "1e-308 mm",
        "1e999 km",
        "5 mm mm",
        "50",
        "mm",
        "1 L",
        "90 °",
        "20 °C",
        "1,5 mm",
        "٣ mm",
        "\ud83d\udd27",
        "2026-02-30",
        "9999-12-31",
        "0001-01-01",
        new('9', 400),
        new('x', 201),
    ];

    private static readonly string[] Numbers =
    [
        "0",
        "-0",
        "1",
        "-1",
        "0.5",
        "1e308",
        "-1e308",
        "5e-324",
        "1e999",
        "2147483647",
        "2147483648",
        "1e-400",
        "null",
        "true",
        "false",
        "[]",
        "{}",
        "[[]]",
    ];

    private readonly Random chance = new(seed);

    /// <summary>The next one, and the calculation that is asked.</summary>
    public (string Calculation, byte[] Request) Next()
    {
        var (calculation, given) = whole[chance.Next(whole.Count)];
        if (chance.Next(40) == 0)
            calculation = whole[chance.Next(whole.Count)].Calculation;
        if (chance.Next(4) == 0)
            return (calculation, Noise(Encoding.UTF8.GetBytes(given)));
        var request = JsonNode.Parse(given)!;
        for (var changes = 1 + chance.Next(3); changes > 0; changes--)
            Change(request);
        return (calculation, Encoding.UTF8.GetBytes(request.ToJsonString()));
    }

    private void Change(JsonNode request)
    {
        var places = Places(request).ToArray();
        if (places.Length == 0)
            return;
        switch (places[chance.Next(places.Length)])
        {
            case JsonObject { Count: > 0 } here:
                ChangeIn(here, here.ElementAt(chance.Next(here.Count)));
                break;
            case JsonArray { Count: > 0 } here:
                ChangeIn(here, chance.Next(here.Count));
                break;
        }
    }

    private static IEnumerable<JsonNode> Places(JsonNode node) =>
        node switch
        {
            JsonObject o => o.Select(p => p.Value).OfType<JsonNode>().SelectMany(Places).Prepend(o),
            JsonArray a => a.OfType<JsonNode>().SelectMany(Places).Prepend(a),
            _ => [],
        };

    private void ChangeIn(JsonObject here, KeyValuePair<string, JsonNode?> at)
    {
        switch (chance.Next(6))
        {
            case 0:
                here.Remove(at.Key);
                break;
            case 1:
                here.Remove(at.Key);
                here[at.Key + "s"] = at.Value;
                break;
            default:
                here[at.Key] = Other(at.Value);
                break;
        }
    }

    private void ChangeIn(JsonArray here, int at)
    {
        switch (chance.Next(8))
        {
            case 0:
                here.RemoveAt(at);
                break;
            case 1:
                here.Insert(at, here[at]?.DeepClone());
                break;
            case 2:
                here.Clear();
                break;
            case 3 when chance.Next(20) == 0:
                var copied = here[at];
                for (var i = chance.Next(300); i > 0; i--)
                    here.Add(copied?.DeepClone());
                break;
            default:
                here[at] = Other(here[at]);
                break;
        }
    }

    private JsonNode? Other(JsonNode? value) =>
        chance.Next(8) switch
        {
            0 => JsonValue.Create(Texts[chance.Next(Texts.Length)]),
            1 => Parsed(Numbers[chance.Next(Numbers.Length)]),
            _ => Scaled(value),
        };

    // A near miss: the same with another number in it.
    private JsonNode? Scaled(JsonNode? value)
    {
        if (value is not JsonValue)
            return value?.DeepClone();
        var factor = new[] { -1, 0, 0.5, 2, 10, 1e3, 1e6, 1e12 }[chance.Next(8)];
        var parts = value.ToString().Split(' ', 2);
        if (!double.TryParse(parts[0], out var number) || !double.IsFinite(number * factor))
            return value.DeepClone();
        return parts.Length == 2
            ? JsonValue.Create(FormattableString.Invariant($"{number * factor:R} {parts[1]}"))
            : JsonValue.Create(number * factor);
    }

    private static JsonNode? Parsed(string text) => JsonNode.Parse(text);

    private byte[] Noise(byte[] bytes)
    {
        for (var changes = 1 + chance.Next(4); changes > 0 && bytes.Length > 0; changes--)
        {
            var at = chance.Next(bytes.Length);
            bytes = chance.Next(4) switch
            {
                0 => bytes[..at],
                1 => [.. bytes[..at], .. bytes[(at + 1)..]],
                2 => [.. bytes[..at], .. bytes[at..Math.Min(bytes.Length, at + chance.Next(30))], .. bytes[at..]],
                _ => [.. bytes[..at], (byte)chance.Next(256), .. bytes[(at + 1)..]],
            };
        }
        return bytes;
    }
}
