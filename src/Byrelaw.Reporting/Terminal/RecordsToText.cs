namespace Byrelaw.Reporting.Terminal;

/// <summary>By whose word records reach how far, where a person says so for one run.</summary>
public static class RecordsToText
{
    /// <summary><c>Up to 20 October 2026 all is written down by your word (--records-to). Last entries: events.csv 4 October 2026.</c>, with a line end.</summary>
    public static string Of(Herd herd, LocalDate day)
    {
        var last = LastEntries.Of(herd).Select(file => $"{FileWords.Short(file.File)} {(file.Last is { } entry ? Dates.Long(entry) : "has none")}").ToList();
        return $"Up to {Dates.Long(day)} all is written down by your word (--records-to). {(last.Count == 1 ? "Last entry" : "Last entries")}: {string.Join("; ", last)}.\n";
    }
}
