namespace Witnessmark.Client.Machines;

/// <summary>Words of the machines.</summary>
internal static class MachinesWords
{
    public const string Title = "Machines";
    public const string Find = "Find a machine";
    public const string FindHint = "a name, part of a VIN, a year";
    public const string Nothing = "No machine of the shop's file has that in it.";
    public const string NoSuchMachine = "There is no such machine in the shop's file";
    public const string Distances = "Distances";
    public const string NoDistances = "No distance is on record here.";
    public const string Visits = "Visits";
    public const string NoVisits = "This device knows of no visit.";
    public const string Readings = "Readings at each point";
    public const string NoReadings = "Nothing has been read here yet.";
    public const string Day = "Day";
    public const string Distance = "Distance";
    public const string Reading = "Reading";
    public const string Verdict = "Verdict";
    public const string NotReleased = "not released";

    public static string Kilometres(double? kilometres) =>
        kilometres is { } known
            ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{known:0.#} km")
            : "not read";
}
