using System.Globalization;

namespace Witnessmark.Handbook.Languages;

/// <summary>How a language writes numbers and days.</summary>
internal abstract class Ways
{
    public static Ways English { get; } = new EnglishWays('−');

    /// <summary>English in entries, files and between programs, which know a negative number by its hyphen.</summary>
    public static Ways Written { get; } = new EnglishWays('-');

    public static Ways German { get; } = new GermanWays();

    /// <summary>The decimal mark.</summary>
    public abstract char Mark { get; }

    /// <summary>The sign before a negative number.</summary>
    public virtual char Minus => '−';

    public abstract string Day(DayForm form, DateOnly day);

    private sealed class EnglishWays(char minus) : Ways
    {
        public override char Mark => '.';

        public override char Minus => minus;

        public override string Day(DayForm form, DateOnly day) =>
            day.ToString(
                form switch
                {
                    DayForm.Figures => "yyyy-MM-dd",
                    DayForm.Words => "d MMMM yyyy",
                    DayForm.Month => "MMMM yyyy",
                    _ => "ddd d MMM",
                },
                CultureInfo.InvariantCulture
            );
    }

    private sealed class GermanWays : Ways
    {
        private static readonly string[] Months =
        [
            "Januar",
            "Februar",
            "März",
            "April",
            "Mai",
            "Juni",
            "Juli",
            "August",
            "September",
            "Oktober",
            "November",
            "Dezember",
        ];

        private static readonly string[] Short =
        [
            "Jan.",
            "Feb.",
            "März",
            "Apr.",
            "Mai",
            "Juni",
            "Juli",
            "Aug.",
            "Sept.",
            "Okt.",
            "Nov.",
            "Dez.",
        ];

        private static readonly string[] Week = ["So", "Mo", "Di", "Mi", "Do", "Fr", "Sa"];

        public override char Mark => ',';

        public override string Day(DayForm form, DateOnly day) =>
            form switch
            {
                DayForm.Figures => day.ToString("dd.MM.yyyy", CultureInfo.InvariantCulture),
                DayForm.Words => $"{Number(day.Day)}. {Months[day.Month - 1]} {Number(day.Year)}",
                DayForm.Month => $"{Months[day.Month - 1]} {Number(day.Year)}",
                _ => $"{Week[(int)day.DayOfWeek]} {Number(day.Day)}. {Short[day.Month - 1]}",
            };

        private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
    }
}
