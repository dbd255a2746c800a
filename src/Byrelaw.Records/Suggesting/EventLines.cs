using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>Lines for a file with a row for each event.</summary>
internal sealed class EventLines(SuggestedFile file, AnimalColumn? animal, HeadingMeanings meanings)
{
    private const int Indent = 4;
    private const int Bullet = 6;

    private static readonly string[] Landed = ["value", "unit", "note", "recorded", "sample"];

    /// <summary>All of them.</summary>
    public IEnumerable<SuggestedLine> Make()
    {
        var lines = new List<SuggestedLine>();
        var dates = Dates();
        lines.AddRange(dates.Select(column => new SuggestedLine(Indent, $"date in {NameText.Text(column.Heading)}", IsOpen: dates.Count > 1 || Unread(column) > 0,
            Unread(column) is > 0 and var unread ? $"{unread} of {column.Texts.Count} cells are no date" : null)));
        var ofAll = KindOfFile.Of(file.OwnName, meanings.Vocabulary);
        var (tested, test) = Tested(dates, ofAll);
        var codes = Codes(dates, tested);
        ColumnProfile[] rest = [.. file.Columns.Where(column => column.Heading.Length > 0 && column != animal?.Column && !dates.Contains(column) && column != codes && column != tested)];
        var values = Array.Find(rest, column => meanings.Declared(column, Landed) == "value");
        var detail = values is null ? Array.Find(rest, column => meanings.IsHeaded(column, "value")) : null;
        if (ofAll is EventKind)
        {
            lines.Add(new SuggestedLine(Indent, $"kind is {NameText.Exact(ofAll.Name)}", IsOpen: true, "by what the file is called: is every row one?"));
        }

        if (test is not null)
        {
            lines.Add(new SuggestedLine(Indent, $"{NameText.Exact(test.Name)} in {NameText.Text(tested!.Heading)}", IsOpen: true, $"{tested.Texts.Count} different"));
            lines.AddRange(AnswerHints.Bullets(tested, test, Bullet));
        }

        var results = new ResultColumns(values, detail, [.. rest.Where(column => column != values && column != detail && meanings.Declared(column, Landed) is null && HeadingHints.Find(column.Name) != "note")]);
        var own = new List<ColumnProfile>();
        if (codes is not null)
        {
            var bullets = new CodeLines(file, codes, animal?.Column, results, meanings);
            string[] said = [$"{codes.Texts.Count} different", .. bullets.Known() is { } known ? [known] : Array.Empty<string>()];
            lines.Add(new SuggestedLine(Indent, $"kind in {NameText.Text(codes.Heading)}", IsOpen: !meanings.IsHeaded(codes, "kind") || ofAll is EventKind || test is not null, string.Join("; ", said)));
            lines.AddRange(bullets.Make());
            if (tested is not null)
            {
                lines.Add(new SuggestedLine(Indent, $"value in {NameText.Text(tested.Heading)}", IsOpen: true, $"in place of `{NameText.Exact(test!.Name)} in {NameText.Text(tested.Heading)}`, where {NameText.Text(codes.Heading)} says which test it was"));
            }

            own.AddRange(rest.Where(column => lines.Exists(line => line.Text.Contains($"value in {NameText.Text(column.Heading)}", StringComparison.Ordinal))));
        }

        if (codes is not null && ofAll?.Details.FirstOrDefault(detail => NameFolding.Fold(detail.Name) == NameFolding.Fold(codes.Name)) is { } ofRow)
        {
            lines.Add(new SuggestedLine(Indent, $"{NameText.Exact(ofRow.Name)} in {NameText.Text(codes.Heading)}", IsOpen: true, $"with `kind is {NameText.Exact(ofAll.Name)}`"));
            lines.AddRange(AnimalLines.ValueBullets(codes, ofRow.Values));
        }

        if (codes is null && ofAll is EventKind { IsMobMove: true } && results.For(ofAll, [.. file.Table.Rows.Where(row => row.Flaw is null)]) is { } mobs)
        {
            lines.Add(new SuggestedLine(Indent, $"value in {NameText.Text(mobs.Heading)}", IsOpen: true, "the mob to which each goes?"));
            own.Add(mobs);
        }

        var unread = new List<string>();
        foreach (var column in rest.Where(column => !own.Contains(column)))
        {
            var those = Line(column) is { } line ? [line] : ByAbbreviation(column).ToList();
            lines.AddRange(those);
            if (those.Count == 0)
            {
                unread.Add(column.Heading);
            }
        }

        lines.AddRange(AnimalLines.Herds(file, meanings, unread));
        lines.AddRange(AnimalLines.Unread(unread, meanings));
        return lines;
    }

    /// <summary>The column that holds answers of one test, and the test; nulls for none.</summary>
    private (ColumnProfile? Column, TestKind? Test) Tested(List<ColumnProfile> dates, Kind? ofAll)
    {
        foreach (var column in file.Columns.Where(column => column != animal?.Column && !dates.Contains(column) && column.Filled > 0 && !column.HoldsNumbers && meanings.Vocabulary.FindKind(column.Name) is null))
        {
            if (AnswerHints.TestIn(column, meanings.Vocabulary) is { } test && (ofAll is null or TestKind) && !column.Texts.Keys.Any(text => meanings.Vocabulary.FindKind(text) is EventKind))
            {
                return (column, test);
            }
        }

        return default;
    }

    private SuggestedLine? Line(ColumnProfile column)
    {
        if (meanings.Declared(column, Landed) is { } declared)
        {
            if (Landed.Contains(declared) || meanings.Vocabulary.FindKind(declared) is not null)
            {
                return Landed.Contains(declared) ? new SuggestedLine(Indent, $"{declared} in {NameText.Text(column.Heading)}", IsOpen: declared == "recorded" && !column.HoldsDates)
                    : Own(column, meanings.Vocabulary.FindKind(declared)!, isSure: true);
            }
        }

        if (meanings.Vocabulary.Kinds.SelectMany(kind => kind.Details).FirstOrDefault(detail => NameFolding.Fold(detail.Name) == NameFolding.Fold(column.Name)) is { } named)
        {
            return new SuggestedLine(Indent, $"{NameText.Exact(named.Name)} in {NameText.Text(column.Heading)}");
        }

        return meanings.Hinted(column) is { } what && meanings.Vocabulary.FindKind(what) is { } hinted ? Own(column, hinted, isSure: false)
            : HeadingHints.Find(column.Name) is "note" ? new SuggestedLine(Indent, $"note in {NameText.Text(column.Heading)}") : null;
    }

    /// <summary>A column of numbers that may be a measure's own, by a heading such as <c>Cu</c>.</summary>
    private IEnumerable<SuggestedLine> ByAbbreviation(ColumnProfile column) => !column.HoldsNumbers ? []
        : Abbreviations.KindsFor(column.Name, meanings.Vocabulary).OfType<MeasureKind>().Select(kind => Own(column, kind, isSure: false)).OfType<SuggestedLine>();

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
    private ColumnProfile? Codes(List<ColumnProfile> dates, ColumnProfile? tested)
    {
        ColumnProfile[] texts = [.. file.Columns.Where(column => column != animal?.Column && column != tested && !dates.Contains(column) && !column.HoldsNumbers && column.Filled > 0 && !KindOfFile.IsHeadedMob(column))];
        var worded = texts.Where(column => !column.AreAllDifferent && column.Texts.Keys.Any(IsWord)).ToList();
        return worded.Find(column => meanings.IsHeaded(column, "kind")) ?? worded.MaxBy(column => column.Texts.Where(text => IsWord(text.Key)).Sum(text => text.Value)) ?? Array.Find(texts, column => meanings.IsHeaded(column, "kind"));
    }

    private bool IsWord(string text) => KindOfFile.IsMove(text) || meanings.Vocabulary.FindKind(text) is not null || meanings.Vocabulary.Hints.Any(hint => HintedWord.StandsIn(text, hint.Word));
}
