namespace Byrelaw.Records.Entering;

/// <summary>
/// The text of <c>events.csv</c>, to which rows are added: what stands there stays as it is, byte for byte, but for new columns, which lengthen its rows by empty cells, and for what
/// was blank in a row of the same sheet.
/// </summary>
internal sealed class EventsToAddTo
{
    private static readonly string[] Required = ["date", "animal", "kind"];

    private const string SheetRow = "sheet row";
    private static readonly string[] Begin = ["date", "animal", "kind", "value", "unit", "note", "recorded", SheetRow];

    private readonly string _mark;
    private readonly string _lineEnd;
    private readonly List<string> _lines;
    private readonly List<string> _headings;
    private readonly int _width;
    private readonly Dictionary<int, Dictionary<string, string>> _filled = [];

    // Lines after which a cell in quotation marks goes on.
    private readonly HashSet<int> _goesOn;

    private EventsToAddTo(string mark, string lineEnd, List<string> lines, List<string> headings)
    {
        (_mark, _lineEnd, _lines, _headings) = (mark, lineEnd, lines, headings);
        _width = headings.Count;
        _goesOn = GoingOn(lines, _width);
    }

    /// <summary>How many lines stand there.</summary>
    public int Lines => _lines.Count;

    /// <summary>How many blank cells of rows were filled in.</summary>
    public int Filled => _filled.Values.Sum(row => row.Count);

    /// <summary>Takes a file; null, with what is wrong, where nothing can be added to it.</summary>
    /// <param name="bytes">As it stands; null for no file.</param>
    /// <param name="shown">Its name.</param>
    /// <param name="problem">What is wrong.</param>
    public static EventsToAddTo? Of(byte[]? bytes, string shown, out Diagnostic? problem)
    {
        problem = null;
        if (bytes is null)
        {
            return new EventsToAddTo("", "\n", [string.Join(',', Begin)], [.. Begin]);
        }

        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] || SourceText.Of(bytes, null, int.MaxValue, out _) is not { } text)
        {
            problem = SheetProblems.CannotBeWritten(shown, "");
            return null;
        }

        var lines = text.Split('\n').ToList();
        if (lines[^1].Length > 0)
        {
            problem = SheetProblems.EndsWithoutLineEnd(shown, lines.Count, lines[^1].TrimEnd('\r'));
            return null;
        }

        lines.RemoveAt(lines.Count - 1);
        var headings = lines.Count == 0 ? [] : CellSplitter.Split(lines[0].TrimEnd('\r')).Select(cell => ColumnMap.Fold(cell.Value)).ToList();
        if (Required.Any(heading => headings.Count(one => one == heading) != 1))
        {
            problem = SheetProblems.CannotBeWritten(shown, lines.Count == 0 ? "" : lines[0].TrimEnd('\r'));
            return null;
        }

        return new EventsToAddTo(bytes is [0xEF, 0xBB, 0xBF, ..] ? "\uFEFF" : "", lines[0].EndsWith('\r') ? "\r\n" : "\n", lines, headings);
    }

    /// <summary>Where an entry stands already; the line of its row, from 1. 0 where it does not.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="number">Its sheet.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="otherwise">What that row says otherwise, and what the entry says; null where they agree. What is blank there is filled in.</param>
    public int Find(RecordedEntry entry, string number, Vocabulary vocabulary, out (string Was, string Now)? otherwise)
    {
        otherwise = null;
        var (sheetRow, day) = ($"{number}:{entry.Row}", NodaTime.Text.LocalDatePattern.Iso.Format(entry.Date));
        for (var line = 2; line <= _lines.Count; line++)
        {
            var text = _lines[line - 1];
            var names = text.Contains(sheetRow, StringComparison.Ordinal);
            if (!names && !(text.Contains(day, StringComparison.Ordinal) && text.Contains(entry.Animal, StringComparison.Ordinal)))
            {
                continue;
            }

            var cells = CellSplitter.Split(text.TrimEnd('\r'));
            if (cells.Count != _width || cells.Exists(cell => cell.Flaw != CellFlaw.None))
            {
                continue;
            }

            string At(string heading) => _headings.IndexOf(heading) is >= 0 and var at && at < cells.Count ? cells[at].Value : "";
            var isNotDone = NameFolding.Fold(At("kind")) == RecordedEntry.NotDoneKind;
            if (vocabulary.FindKind(isNotDone ? At("value") : At("kind"))?.Id != entry.Kind.Id)
            {
                continue;
            }

            if (At(SheetRow) == sheetRow)
            {
                otherwise = isNotDone != entry.IsNotDone ? (isNotDone ? "not done" : "done", entry.IsNotDone ? "not done" : "done") : Otherwise(entry, cells, fills: line);
                return line;
            }

            // Rows of one sheet are never each other.
            if (!isNotDone && !entry.IsNotDone && !At(SheetRow).StartsWith(number + ":", StringComparison.Ordinal) && At("date") == day && At("animal") == entry.Animal && Otherwise(entry, cells, fills: 0) is null && Agrees(entry, cells))
            {
                return line;
            }
        }

        return 0;
    }

    /// <summary>The file with more rows below its last.</summary>
    /// <param name="entries">What they say.</param>
    /// <param name="number">Their sheet.</param>
    /// <param name="recorded">The day of entry.</param>
    public byte[] With(IReadOnlyList<RecordedEntry> entries, string number, LocalDate recorded)
    {
        var rows = entries.Select(entry => Cells(entry, number, recorded).Where(cell => cell.Value.Length > 0).ToList()).ToList();
        foreach (var heading in rows.SelectMany(row => row).Select(cell => cell.Heading).Concat(_filled.Values.SelectMany(row => row.Keys)).Where(heading => !_headings.Contains(heading)).Distinct().ToList())
        {
            _headings.Add(heading);
        }

        var (text, more) = (new StringBuilder(_mark), _headings.Count - _width);
        for (var line = 0; line < _lines.Count; line++)
        {
            Append(text, line, more);
        }

        foreach (var row in rows)
        {
            text.AppendJoin(',', _headings.Select(heading => Quoted(row.FirstOrDefault(cell => cell.Heading == heading).Value ?? ""))).Append(_lineEnd);
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private void Append(StringBuilder text, int line, int more)
    {
        var end = _lines[line].EndsWith('\r') ? "\r\n" : "\n";
        var old = _lines[line].TrimEnd('\r');
        if (_filled.TryGetValue(line + 1, out var filled))
        {
            var cells = CellSplitter.Split(old);
            text.AppendJoin(',', _headings.Select((heading, at) => Quoted(filled.GetValueOrDefault(heading) ?? (at < cells.Count ? cells[at].Value : "")))).Append(end);
            return;
        }

        text.Append(old);
        if (line == 0 && more > 0)
        {
            text.Append(',').AppendJoin(',', _headings.Skip(_width).Select(Quoted));
        }
        else if (old.Trim().Length > 0 && !_goesOn.Contains(line))
        {
            text.Append(',', more);
        }

        text.Append(end);
    }

    /// <summary>A remark may go over several lines; its row ends with the last of them.</summary>
    private static HashSet<int> GoingOn(List<string> lines, int width)
    {
        var goesOn = new HashSet<int>();
        for (var line = 1; line < lines.Count; line++)
        {
            if (lines[line].Count(sign => sign == '"') % 2 == 0)
            {
                continue;
            }

            var row = string.Join('\n', lines.Skip(line).Take(RowOverLines.Longest / 64)) + '\n';
            if (RowOverLines.Of(row.AsSpan(), ',', width, isToTheEnd: true, out var length) == OverLines.Yes)
            {
                for (var more = row.AsSpan(0, length).Count('\n'); more > 0; more--)
                {
                    goesOn.Add(line++);
                }
            }
        }

        return goesOn;
    }

    /// <summary>What a row says otherwise than an entry; null for nothing. What is blank in it is noted to be filled in, where it is a row of the same sheet.</summary>
    private (string Was, string Now)? Otherwise(RecordedEntry entry, List<Cell> cells, int fills)
    {
        var blank = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (heading, value) in Said(entry).Where(cell => cell.Value.Length > 0))
        {
            var at = _headings.IndexOf(heading);
            var was = at >= 0 && at < cells.Count ? cells[at].Value : "";
            if (NameFolding.Fold(was) == NameFolding.Fold(value) || heading == "kind")
            {
                continue;
            }

            if (was.Length > 0 || fills == 0)
            {
                if (heading == "note")
                {
                    continue;
                }

                return ($"{heading} `{(was.Length > 0 ? was : "blank")}`", $"`{value}`");
            }

            blank[heading] = value;
        }

        if (fills > 0 && blank.Count > 0)
        {
            _filled[fills] = blank;
        }

        return null;
    }

    /// <summary>Whether a row has nothing that an entry has not: the day, animal, kind, value and all details agree.</summary>
    private bool Agrees(RecordedEntry entry, List<Cell> cells)
    {
        var said = Said(entry).ToList();
        return !_headings.Where((heading, at) => heading is not ("kind" or "note" or "recorded" or "sample" or SheetRow) && at < cells.Count && cells[at].Value.Length > 0 && said.Find(one => one.Heading == heading).Value is null or "").Any();
    }

    private static IEnumerable<(string Heading, string Value)> Said(RecordedEntry entry) =>
    [
        ("date", NodaTime.Text.LocalDatePattern.Iso.Format(entry.Date)), ("animal", entry.Animal), ("kind", entry.IsNotDone ? RecordedEntry.NotDoneKind : entry.Kind.Name),
        ("value", entry.IsNotDone ? entry.Kind.Name : entry.Value), ("unit", entry.Unit), ("note", entry.Note), .. entry.Details.Select(detail => (ColumnMap.Fold(detail.Name), detail.Value)),
    ];

    private static IEnumerable<(string Heading, string Value)> Cells(RecordedEntry entry, string number, LocalDate recorded) =>
        [.. Said(entry), ("recorded", NodaTime.Text.LocalDatePattern.Iso.Format(recorded)), (SheetRow, $"{number}:{entry.Row}")];

    private static string Quoted(string cell)
    {
        var line = cell.AsSpan().ContainsAny('\n', '\r') ? cell.ReplaceLineEndings(" ") : cell;
        return line.AsSpan().ContainsAny(',', '"') ? $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : line;
    }
}
