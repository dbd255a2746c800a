namespace Byrelaw.Reporting.Words;

/// <summary>The records an answer rests on, each with its file and line.</summary>
public static class EvidenceWords
{
    /// <summary>More than this many records are counted, not listed: a mob can have hundreds.</summary>
    private const int AtMost = 12;

    /// <summary><c>calving 7 Sep (events.csv 318)</c>, records of one kind together; empty for none.</summary>
    public static string Of(IEnumerable<Evidence> evidence, ListReport list)
    {
        var all = evidence.Distinct().ToList();
        var said = all.Take(AtMost).GroupBy(item => (Name(item), item.File)).Select(group =>
        {
            var records = string.Join(", ", group.Select(item => Record(item, list)).Where(text => text.Length > 0));
            var lines = string.Join(", ", group.Where(item => item.Line > 0).Select(Line).Distinct());
            var place = lines.Length == 0 ? "" : IsPlanned(group.Key.File, list) ? $" ({PlannedWords.Place})" : $" ({FileWords.Short(group.Key.File)}{(group.Any(item => item.Cell is not null) ? "," : "")} {lines})";
            return records.Length == 0 ? group.Key.Item1 + place : $"{group.Key.Item1} {records}{place}";
        });
        var more = all.Count > AtMost ? $"; and {Numbers.Count(all.Count - AtMost, "more record", "more records")}" : "";
        return string.Join("; ", said) + more;
    }

    /// <summary>Rows that are supposed of a list for which something is planned stand there because it is.</summary>
    private static bool IsPlanned(string file, ListReport list) => !list.List.Planned.IsEmpty && file == "supposed";

    private static string Line(Evidence item) => item.Cell ?? item.Line.ToString(CultureInfo.InvariantCulture);

    private static string Name(Evidence item) => item.Kind?.Name ?? item.Fact ?? "record";

    private static string Record(Evidence item, ListReport list) =>
        string.Join(' ', new[] { item.Value, item.Details is { } details ? $"({details})" : null, item.Date is { } date ? list.Short(date) : null }.Where(part => !string.IsNullOrEmpty(part)));
}
