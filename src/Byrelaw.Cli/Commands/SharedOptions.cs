using System.CommandLine.Parsing;

namespace Byrelaw.Cli.Commands;

/// <summary>The options that several commands share.</summary>
internal static class SharedOptions
{
    public static Option<LocalDate?> On() => Date("--on", "Judge for this day instead of the programme's judging days.");

    public static Option<LocalDate?> KnownOn() =>
        Date("--known-on", "Judge as known on this day: rows entered and agreements made later are not seen.");

    public static Option<LocalDate?> RecordsTo() =>
        Date("--records-to", "Your word, for this run, that everything is written down up to this day; it stands for every `up to`.");

    /// <summary>Says by whose word records reach how far; nothing where nobody gave it.</summary>
    public static void SayRecordsTo(LocalDate? recordsTo, Herd herd, Doors doors)
    {
        if (recordsTo is { } day)
        {
            doors.Err.Write(RecordsToText.Of(herd, day));
        }
    }

    /// <summary>The day of <c>--records-to</c>.</summary>
    /// <exception cref="CannotDoException">It is to come.</exception>
    public static LocalDate? Reached(LocalDate? recordsTo, Doors doors) => recordsTo > doors.Today
        ? throw new CannotDoException($"--records-to {LocalDatePattern.Iso.Format(recordsTo.Value)} is to come: nobody has written down what has not happened yet; today is {LocalDatePattern.Iso.Format(doors.Today)}")
        : recordsTo;

    public static Option<string> Format(params string[] more)
    {
        string[] all = ["text", "json", .. more];
        var format = new Option<string>("--format") { Description = "text for people, json for programs.", HelpName = string.Join('|', all), DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong(all);
        return format;
    }

    public static Option<bool> Strict() => new("--strict") { Description = "End with 1 where rows of the records cannot be read; without it they are told, and hold answers back." };

    public static Option<string?> Herd() => new("--herd") { Description = "Which herd, where the records hold several (`herd in` below `from`).", HelpName = "NAME" };

    public static Option<string?> By() => new("--by") { Description = "Who judges, for the log; without it no name is written there.", HelpName = "TEXT" };

    public static Option<LocalDate?> Date(string name, string description) =>
        new(name) { Description = description, HelpName = "YYYY-MM-DD", CustomParser = result => Parse(name, result) };

    private static LocalDate? Parse(string name, ArgumentResult result)
    {
        var text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (!parsed.Success || parsed.Value.Year is < 1900 or > 9000)
        {
            result.AddError($"{name} wants a date such as 2026-10-20, not `{text}`");
            return null;
        }

        return parsed.Value;
    }
}
