namespace Byrelaw.Reporting.Calendar;

/// <summary>
/// Writes an iCalendar file (RFC 5545). Entries keep their UID, and a later plan has a higher SEQUENCE, so that importing the file
/// again moves entries instead of doubling them.
/// </summary>
public static class CalendarText
{
    /// <summary>Lines are no longer than this, in octets without their line end (RFC 5545, 3.1).</summary>
    private const int LongestLine = 75;

    private static readonly LocalDate FirstSequence = new(2020, 1, 1);

    /// <summary>The whole file, lines ended with CRLF.</summary>
    /// <param name="name">The calendar's name; the same programme keeps the same one, for it is part of every UID.</param>
    /// <param name="drawnUp">The day of planning: it stamps the entries, for a clock would make every file another.</param>
    /// <param name="events">In any order.</param>
    public static string Of(string name, LocalDate drawnUp, IEnumerable<CalendarEvent> events)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(events);
        var text = new StringBuilder();
        var stamp = $"{Day(drawnUp)}T000000Z";
        var sequence = Math.Max(0, Period.DaysBetween(FirstSequence, drawnUp)).ToString(CultureInfo.InvariantCulture);
        Line("BEGIN:VCALENDAR");
        Line("VERSION:2.0");
        Line("PRODID:-//Byrelaw//Plan//EN");
        Line("CALSCALE:GREGORIAN");
        Line("METHOD:PUBLISH");
        Line($"X-WR-CALNAME:{Escaped(name)}");
        foreach (var entry in events.OrderBy(entry => entry.From).ThenBy(entry => entry.Id, StringComparer.Ordinal))
        {
            Line("BEGIN:VEVENT");
            Line($"UID:{Escaped($"{entry.Id}@{name}")}");
            Line($"DTSTAMP:{stamp}");
            Line($"SEQUENCE:{sequence}");
            Line($"DTSTART;VALUE=DATE:{Day(entry.From)}");

            // The end of a whole day is the day after it (RFC 5545, 3.6.1).
            Line($"DTEND;VALUE=DATE:{Day(entry.To.PlusDays(1))}");
            Line($"SUMMARY:{Escaped(entry.Title)}");
            if (entry.Text.Length > 0)
            {
                Line($"DESCRIPTION:{Escaped(entry.Text)}");
            }

            Line("TRANSP:TRANSPARENT");
            Line("END:VEVENT");
        }

        Line("END:VCALENDAR");
        return text.ToString();

        void Line(string line) => AppendFolded(text, line);
    }

    /// <summary>Backslash, semicolon, comma and line ends as RFC 5545, 3.3.11 writes them; other control characters go, and marks that turn the direction of writing become U+FFFD.</summary>
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text.ReplaceLineEndings("\n"))
        {
            _ = c switch
            {
                '\\' or ';' or ',' => escaped.Append('\\').Append(c),
                '\n' => escaped.Append("\\n"),
                _ when char.IsControl(c) && c != '\t' => escaped,
                _ => escaped.Append(PlainText.TurnsDirection(c) ? '\uFFFD' : c),
            };
        }

        return escaped.ToString();
    }

    /// <summary>Folds between whole characters: never inside one that takes several octets.</summary>
    private static void AppendFolded(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LongestLine)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune);
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }

    private static string Day(LocalDate date) => date.ToString("uuuuMMdd", CultureInfo.InvariantCulture);
}
