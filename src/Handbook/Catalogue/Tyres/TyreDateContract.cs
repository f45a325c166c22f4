using System.Globalization;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tyre-date</c>.</summary>
internal static class TyreDateContract
{
    private static readonly Input<string> Code = Take.Words(
        "code",
        "the three or four digits at the end of the number"
    );
    private static readonly Input<DateOnly> On = Take.Day("on", "day for which the age is asked");
    private static readonly Input<int> Decade = Take.Count(
            "decade",
            "first year of the decade, e.g. 1990; needed with three digits",
            1900,
            2090
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "tyre-date",
            "Tyres",
            "The week a tyre was made in and its age, from the date code.",
            "49 CFR 574.5",
            typeof(TyreDate),
            [Code, On, Decade],
            [
                new("weekStarts", "date", "the Sunday that begins the week"),
                new("age", "day", "from that Sunday to the day asked about"),
                new("note", "text", "when four digits give a year in which none were used"),
            ],
            Read
        );

    private static Reply Read(Given given)
    {
        var code = given.Of(Code);
        if (!TyreDate.IsCode(code))
            throw given.Wrong("code", $"\"{code}\"", "three or four digits");
        var decade = given.Maybe(Decade);
        if (decade % 10 is not (0 or null))
            throw given.Wrong("decade", $"{decade}", "the first year of a decade, e.g. 1990");
        var answer = TyreDate.Read(code, given.Of(On), decade);
        if (answer.Value?.WeekStarts.Year is { } year && decade is { } d && (year < d || year > d + 9))
            throw given.Wrong("decade", $"{d} beside the year {year}", "the decade that the code says, or left out");
        return Reply.To(
            answer,
            tyre =>
                new Gives()
                    .With("weekStarts", tyre.WeekStarts.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
                    .With("age", tyre.Age, "day")
                    .With("note", tyre.Note)
        );
    }
}
