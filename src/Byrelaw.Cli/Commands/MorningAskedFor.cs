namespace Byrelaw.Cli.Commands;

/// <summary>The sheets that are asked for.</summary>
/// <param name="Programme">The programme's file.</param>
/// <param name="Day">The morning.</param>
/// <param name="IsRehearsal">Whether it is only rehearsed, as if today were that day.</param>
internal sealed record MorningAskedFor(string Programme, LocalDate Day, bool IsRehearsal)
{
    /// <summary>Where they go where nobody says.</summary>
    public const string DefaultOut = "sheets";

    /// <summary>The folder.</summary>
    public string Out { get; init; } = DefaultOut;

    /// <summary>The day up to which a person says that everything is written down; null for what the farm's file says.</summary>
    public LocalDate? RecordsTo { get; init; }

    /// <summary>Who draws them, for the log.</summary>
    public string? By { get; init; }

    /// <summary>What else is asked for and does not go with it.</summary>
    public IReadOnlyList<string> Besides { get; init; } = [];

    /// <summary>Refuses what cannot be drawn.</summary>
    /// <exception cref="CannotDoException">Why not.</exception>
    public void Check(Doors doors)
    {
        if (Besides.Count > 0)
        {
            throw new CannotDoException(Besides[0].StartsWith("--sheet", StringComparison.Ordinal) ? "give --sheet or --rehearse, not both"
                : Besides[0] is "--today" or "--known-on" ? $"{Besides[0]} does not go with a sheet: its today is the clock's. As if today were that day: --rehearse {LocalDatePattern.Iso.Format(Day)}"
                : $"{Besides[0]} does not go with a sheet: a morning's sheets are drawn for every session, and written as papers");
        }

        if (Out.Length == 0)
        {
            throw new CannotDoException("--out wants the name of a folder");
        }

        if (!IsRehearsal && Day < doors.Today)
        {
            throw new CannotDoException($"{LocalDatePattern.Iso.Format(Day)} is over; today is {LocalDatePattern.Iso.Format(doors.Today)}. What was done then is recorded: byrelaw record, with the sheet of that day or with a file of your own. To rehearse it: --rehearse {LocalDatePattern.Iso.Format(Day)}");
        }
    }
}
