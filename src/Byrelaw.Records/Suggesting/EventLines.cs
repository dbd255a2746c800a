using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>Lines for a file with a row for each event.</summary>
internal sealed class EventLines(SuggestedFile file, AnimalColumn? animal, HeadingMeanings meanings)
{
    private const int Indent = 4;

    private static readonly string[] Landed = ["value", "unit", "note", "recorded", "sample"];

    /// <summary>All of them.</summary>
    public IEnumerable<SuggestedLine> Make()
    {
        var lines = new List<SuggestedLine>();
        var dates = Dates();
        lines.AddRange(dates.Select(column => new SuggestedLine(Indent, $"date in {NameText.Text(column.Heading)}", IsOpen: dates.Count > 1 || Unread(column) > 0,
            Unread(column) is > 0 and var unread ? $"{unread} of {column.Texts.Count} cells are no date" : null)));
        var codes = Codes(dates);
        ColumnProfile[] rest = [.. file.Columns.Where(column => column.Heading.Length > 0 && column != animal?.Column && !dates.Contains(column) && column != codes)];
        var values = Array.Find(rest, column => meanings.Declared(column, Landed) == "value");
        var detail = values is null ? Array.Find(rest, column => meanings.IsHeaded(column, "value")) : null;
        if (codes is not null)
        {
            lines.Add(new SuggestedLine(Indent, $"kind in {NameText.Text(codes.Heading)}", IsOpen: !meanings.IsHeaded(codes, "kind"), $"{codes.Texts.Count} different"));
            lines.AddRange(new CodeLines(file, codes, animal?.Column, detail, meanings).Make());
        }

        var unread = new List<string>();
        foreach (var column in rest.Where(column => column != detail || codes is null))
        {
            var own = Line(column) is { } line ? [line] : ByAbbreviation(column).ToList();
            lines.AddRange(own);
            if (own.Count == 0)
            {
                unread.Add(column.Heading);
            }
        }

        lines.AddRange(unread.Count == 0 ? [] : [AnimalLines.Unread(unread)]);
        return lines;
    }

    private SuggestedLine? Line(ColumnProfile column)
    {
        if (meanings.Declared(column, Landed) is { } declared)
        {
            return Landed.Contains(declared) ? new SuggestedLine(Indent, $"{declared} in {NameText.Text(column.Heading)}", IsOpen: declared == "recorded" && !column.HoldsDates)
                : meanings.Vocabulary.FindKind(declared) is { } kind ? Own(column, kind, isSure: true) : null;
        }

        if (meanings.Vocabulary.Kinds.SelectMany(kind => kind.Details).FirstOrDefault(detail => NameFolding.Fold(detail.Name) == NameFolding.Fold(column.Heading)) is { } named)
        {
            return new SuggestedLine(Indent, $"{NameText.Exact(named.Name)} in {NameText.Text(column.Heading)}");
        }

        return meanings.Hinted(column) is { } what && meanings.Vocabulary.FindKind(what) is { } hinted ? Own(column, hinted, isSure: false)
            : HeadingHints.Find(column.Heading) is "note" ? new SuggestedLine(Indent, $"note in {NameText.Text(column.Heading)}") : null;
    }

    /// <summary>A column of numbers that may be a measure's own, by a heading such as <c>Cu</c>.</summary>
    private IEnumerable<SuggestedLine> ByAbbreviation(ColumnProfile column) => !column.HoldsNumbers ? []
        : Abbreviations.KindsFor(column.Heading, meanings.Vocabulary).OfType<MeasureKind>().Select(kind => Own(column, kind, isSure: false)).OfType<SuggestedLine>();

    /// <summary>The column of a kind itself, as a laboratory's sheet has it.</summary>
    private static SuggestedLine? Own(ColumnProfile column, Kind kind, bool isSure) => kind switch
    {
        MeasureKind { Unit: { } unit } when column.HoldsNumbers => new SuggestedLine(
            Indent, $"{NameText.Exact(kind.Name)} in {NameText.Text(column.Heading)}, in {unit.Symbol}", IsOpen: true, "the file does not say the unit"),
        MeasureKind when column.HoldsNumbers => new SuggestedLine(Indent, $"{NameText.Exact(kind.Name)} in {NameText.Text(column.Heading)}", !isSure),
        TestKind test => new SuggestedLine(Indent, $"{NameText.Exact(kind.Name)} in {NameText.Text(column.Heading)}",
            !isSure || !column.All(cell => test.Answers.Any(answer => NameFolding.Fold(answer) == NameFolding.Fold(cell)))),
        _ => null,
    };

    private List<ColumnProfile> Dates()
    {
        List<ColumnProfile> holding = [.. file.Columns.Where(column => column.HoldsDates)];
        var headed = holding.FindAll(column => meanings.IsHeaded(column, "date"));
        return headed.Count > 0 ? headed : holding;
    }

    private static int Unread(ColumnProfile column) => ColumnProfile.Orders.Min(order => column.NoDates(order).Count);

    /// <summary>The column that says what happened: one headed so, else one of few texts among which a declared or a hinted word stands.</summary>
    private ColumnProfile? Codes(List<ColumnProfile> dates)
    {
        ColumnProfile[] texts = [.. file.Columns.Where(column => column != animal?.Column && !dates.Contains(column) && !column.HoldsNumbers && column.Filled > 0)];
        return Array.Find(texts, column => meanings.IsHeaded(column, "kind"))
            ?? texts.Where(column => !column.AreAllDifferent && column.Texts.Keys.Any(IsWord)).MaxBy(column => column.Texts.Where(text => IsWord(text.Key)).Sum(text => text.Value));
    }

    private bool IsWord(string text) => meanings.Vocabulary.FindKind(text) is not null || meanings.Vocabulary.Hints.Any(hint => HintedWord.StandsIn(text, hint.Word));
}
