using System.Text.Json.Nodes;
using Witnessmark.Handbook.Identity;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>vin</c>.</summary>
internal static class VinContract
{
    private static readonly Input<string> Number = Take.Words(
        "vin",
        "the number as stamped; small letters are read too"
    );
    private static readonly Input<string> Region = Take.OneOf(
            "region",
            "where the machine was made for",
            "northAmerica",
            "elsewhere"
        )
        .Or("elsewhere", "\"elsewhere\"");

    public static Calculation Calculation { get; } =
        new(
            "vin",
            "Identity",
            "What a vehicle identification number says of itself.",
            "49 CFR 565.15",
            typeof(Vin),
            [Number, Region],
            [
                new("wellFormed", "true or false", "17 characters without I, O and Q; if not, nothing else is given"),
                new("checkDigit", "text", "as calculated: a digit or X"),
                new("checkDigitMatches", "true or false", "whether it stands at position 9"),
                new("modelYears", "list of years", "both of the 30-year pair; empty without a year letter"),
                new("manufacturerCode", "text", "positions 1–3, for a small manufacturer 12–14 too"),
                new("smallManufacturer", "true or false", "whether position 3 is a 9"),
                new("note", "text", "what to make of a check digit that does not fit"),
            ],
            Read
        );

    private static Reply Read(Given given)
    {
        var region = given.Of(Region) == "northAmerica" ? VinRegion.NorthAmerica : VinRegion.Elsewhere;
        if (Vin.Read(given.Of(Number), region) is not { } vin)
            return new Gives().With("wellFormed", false);
        return new Gives()
            .With("wellFormed", true)
            .With("checkDigit", vin.CheckDigit.ToString())
            .With("checkDigitMatches", vin.CheckDigitMatches)
            .With("modelYears", new JsonArray([.. vin.ModelYears.Select(y => JsonValue.Create(y))]))
            .With("manufacturerCode", vin.ManufacturerCode)
            .With("smallManufacturer", vin.SmallManufacturer)
            .With("note", vin.Note);
    }
}
