namespace Byrelaw.Workshop.Carrying;

/// <summary>
/// Carries a programme's file to another season. Words are moved, marked and left out where they stand; all that is not named
/// in the notes stays letter for letter, comments too.
/// </summary>
public sealed class FileCarrier
{
    /// <summary>The first words of the comment that marks what has to be agreed again.</summary>
    public const string Mark = "# To be agreed again for";

    private readonly RuleFile _file;
    private readonly NextSeason _season;
    private readonly List<(int Start, int Length, string New)> _edits = [];
    private readonly List<CarryNote> _notes = [];
    private readonly int _days;

    private FileCarrier(RuleFile file, NextSeason season, int days)
    {
        _file = file;
        _season = season;
        _days = days;
    }

    /// <summary>Carries a file that reads without errors.</summary>
    /// <param name="shown">Its path as shown.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="season">The new season.</param>
    /// <param name="firstDate">The day that the programme's first date moves to, or about so: null for the same time of year.</param>
    /// <returns>Null where the file holds no programme with a date, or the season does not follow the old one and no first date is given.</returns>
    public static Carried? Carry(string shown, byte[] bytes, NextSeason season, LocalDate? firstDate = null)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(season);
        var file = FileDecoding.Decode(shown, bytes, isRoot: true);
        var blocks = BlocksOf(file);
        if (blocks.FirstOrDefault(block => block.Kind == BlockKind.Programme) is not { Lines: [var head, ..] } programme
            || FirstDate(programme) is not { } first)
        {
            return null;
        }

        var years = season.Year - (NextSeason.YearIn(head.Tokens[^1].Text) ?? first.Year);
        var days = firstDate is { } wanted ? 7 * (int)Math.Round(Period.DaysBetween(first, wanted) / 7.0) : NextSeason.DaysTo(first, years);
        return days <= 0 ? null : new FileCarrier(file, season, days).Carry(blocks, bytes);
    }

    private Carried Carry(List<Part> blocks, byte[] bytes)
    {
        foreach (var block in blocks)
        {
            switch (block.Kind)
            {
                case BlockKind.Programme:
                    Rename(block.Lines[0].Tokens[^1]);
                    block.Lines.ForEach(line => MoveOrRenew(line, "  "));
                    break;
                case BlockKind.Records:
                    block.Lines.Where(line => line.WordAt(0) == "up").ToList().ForEach(DropLine);
                    break;
                case BlockKind.Waive or BlockKind.Done or BlockKind.Stopped:
                    Drop(block);
                    break;
                case BlockKind.Change or BlockKind.Drop or BlockKind.Accept:
                    MarkAbove(block.Lines[0], "");
                    break;
                case BlockKind.Visits or BlockKind.Task:
                    block.Lines.ForEach(Move);
                    break;
                case BlockKind.Rule or BlockKind.Define or BlockKind.Prefer:
                    block.Lines.Where(HasDate).ToList().ForEach(line => Note(CarryKind.LookAt, line, line));
                    break;
            }
        }

        var bom = bytes is [0xEF, 0xBB, 0xBF, ..] ? "\uFEFF" : "";
        return new Carried(bom + Edited(), _days, [.. _notes.OrderBy(note => note.Line)]);
    }

    private void Rename(Token name) =>
        _edits.Add((name.Span.Start, name.Span.Length, $"\"{_season.Rename(name.Text).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\""));

    private void MoveOrRenew(LogicalLine line, string indent)
    {
        if (line.WordAt(0) == "agreed")
        {
            MarkAbove(line, indent);
        }
        else if (line.WordAt(0) == "prepare" && line.Tokens[Math.Min(1, line.Tokens.Length - 1)].Kind == TokenKind.Text)
        {
            // Whom an old season booked says nothing of the next one.
            DropLine(line);
        }
        else if (line.WordAt(0) is "holiday" or "holidays" or "tank")
        {
            Note(CarryKind.LookAt, line, line);
        }
        else
        {
            Move(line);
        }
    }

    private void Move(LogicalLine line)
    {
        foreach (var token in line.Tokens.Where(token => token.Kind == TokenKind.Date))
        {
            _edits.Add((token.Span.Start, token.Span.Length, LocalDatePattern.Iso.Format(token.Date.PlusDays(_days))));
        }

        if (HasDate(line))
        {
            Note(CarryKind.Moved, line, line);
        }
    }

    /// <summary>Marks what was agreed; a mark of the season before gives way to it.</summary>
    private void MarkAbove(LogicalLine line, string indent)
    {
        var source = _file.Source;
        var number = line.Span.Line;
        var start = StartOf(number);
        var before = number > 1 && source.Line(number - 1).TrimStart().StartsWith(Mark, StringComparison.Ordinal) ? StartOf(number - 1) : start;
        _edits.Add((before, start - before, $"{indent}{Mark} {_season.Name}{LineEnd}"));
        Note(CarryKind.ToRenew, line, line);
    }

    private void DropLine(LogicalLine line) => DropLines(line.Span.Line, line.Tokens[^1].Span.File.LineAt(line.Span.End), CarryKind.Dropped);

    /// <summary>Drops a block with the comments that stand directly above it, and one empty line, so that no gap is left.</summary>
    private void Drop(Part block)
    {
        var source = _file.Source;
        var from = block.Lines[0].Span.Line;
        while (from > 1 && source.Line(from - 1).TrimStart().StartsWith('#'))
        {
            from--;
        }

        var to = source.LineAt(block.Lines[^1].Span.End);
        var above = from > 1 && source.Line(from - 1).Trim().Length == 0;
        DropLines(above ? from - 1 : from, to, CarryKind.Dropped, block.Lines[0]);
    }

    private void DropLines(int from, int to, CarryKind kind, LogicalLine? named = null)
    {
        _edits.Add((StartOf(from), StartOf(to + 1) - StartOf(from), ""));
        _notes.Add(new CarryNote(kind, from, to - from + 1, (named is null ? _file.Source.Line(from) : _file.Source.Line(named.Span.Line)).Trim()));
    }

    private void Note(CarryKind kind, LogicalLine first, LogicalLine last) => _notes.Add(
        new CarryNote(kind, first.Span.Line, _file.Source.LineAt(last.Span.End) - first.Span.Line + 1, _file.Source.Line(first.Span.Line).Trim()));

    private int StartOf(int line)
    {
        var text = _file.Source.Text;
        var at = 0;
        for (var i = 1; i < line; i++)
        {
            var end = text.IndexOf('\n', at);
            if (end < 0)
            {
                return text.Length;
            }

            at = end + 1;
        }

        return at;
    }

    private string LineEnd => _file.Source.Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    private string Edited()
    {
        var text = _file.Source.Text;
        foreach (var (start, length, fresh) in _edits.OrderByDescending(edit => edit.Start).ThenByDescending(edit => edit.Length))
        {
            text = text.Remove(start, length).Insert(start, fresh);
        }

        return text;
    }

    private static bool HasDate(LogicalLine line) => Array.Exists(line.Tokens, token => token.Kind == TokenKind.Date);

    private static LocalDate? FirstDate(Part programme)
    {
        var dates = programme.Lines.Where(line => line.WordAt(0) != "agreed").SelectMany(line => line.Tokens).Where(token => token.Kind == TokenKind.Date);
        return dates.Select(token => (LocalDate?)token.Date).Min();
    }

    /// <summary>The file's lines by the block they belong to.</summary>
    private static List<Part> BlocksOf(RuleFile file)
    {
        var heads = BlockReader.Read(file.Lines, new PhraseBook(), []).ToDictionary(block => block.Span.Start, block => block.Kind);
        var parts = new List<Part>();
        foreach (var line in file.Lines)
        {
            if (heads.TryGetValue(line.Span.Start, out var kind))
            {
                parts.Add(new Part(kind, []));
            }

            if (parts.Count > 0)
            {
                parts[^1].Lines.Add(line);
            }
        }

        return parts;
    }

    private sealed record Part(BlockKind Kind, List<LogicalLine> Lines);
}
