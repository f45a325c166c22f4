using System.Globalization;
using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Due;

/// <summary>Service schedules for the tests, in km.</summary>
internal static class Schedule
{
    public static Length Km(double km) => new(km * 1e6);

    public static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static ServiceRule Rule(double? km = null, int? months = null, double? first = null, double severe = 1) =>
        new("oil", km is { } k ? Km(k) : null, months, first is { } f ? Km(f) : null, severe);

    public static OdometerReading Seen(string day, double km) => new(Day(day), Km(km));

    public static ServiceEntry Done(string day, double km) => new("oil", Seen(day, km));

    public static MachineToday Today(
        string day,
        double km,
        double perDay = 10,
        OdometerReading[]? odometer = null,
        OdometerReplacement[]? replaced = null
    ) => new(Day(day), Km(km), Km(perDay), odometer ?? [], replaced ?? []);

    public static DuePoint Judge(
        ServiceRule rule,
        MachineToday machine,
        double horizon,
        params ServiceEntry[] history
    ) => ServiceDue.On([rule], history, machine, horizon).Due.Single();
}
