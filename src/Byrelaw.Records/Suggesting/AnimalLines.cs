using Byrelaw.Language.Canonical;
using Byrelaw.Language.Floors;

namespace Byrelaw.Records.Suggesting;

/// <summary>Lines for a file with a row for each animal.</summary>
/// <param name="file">The file.</param>
/// <param name="animal">The column that names them; null for none.</param>
/// <param name="meanings">What headings may mean.</param>
/// <param name="latest">The latest day in all files; null for none.</param>
internal sealed class AnimalLines(SuggestedFile file, AnimalColumn? animal, HeadingMeanings meanings, string? latest)
{
    private const int Indent = 4;
    private const int Bullet = 6;

    /// <summary>Where no value begins as the text does, so many are told of all the same.</summary>
    private const int FewValues = 5;

    private static readonly string[] Landed = ["born", "sex", "mob", "parity", "parity on"];

    private readonly List<SuggestedLine> _lines = [];
    private readonly List<string> _unread = [];
    private readonly HashSet<string> _said = new(StringComparer.Ordinal);

    /// <summary>All of them.</summary>
    public IEnumerable<SuggestedLine> Make()
    {
        foreach (var column in file.Columns.Where(column => column.Heading.Length > 0 && column != animal?.Column))
        {
            var declared = meanings.Declared(column, Landed);
            if ((declared ?? meanings.Hinted(column)) is not { } what || !_said.Add(what) || !Add(column, what))
            {
                _unread.Add(column.Heading);
            }
        }

        SuggestedLine[] gone = [.. GoneLines.Of(file.Columns, meanings.Vocabulary)];
        _lines.AddRange(gone);
        if (gone is [var line, ..])
        {
            _unread.RemoveAll(heading => line.Text.StartsWith($"kind in {NameText.Text(heading)},", StringComparison.Ordinal));
        }

        if (!_said.Contains("sex"))
        {
            _lines.Add(new SuggestedLine(Indent, "sex is F", IsOpen: true, "no column says so: are they all females?"));
        }

        _unread.RemoveAll(heading => _lines.Exists(line => line.Text.Contains($"dated in {NameText.Text(heading)}", StringComparison.Ordinal)));
        SuggestedLine[] telling = [.. Telling()];
        return [.. _lines, .. telling, .. Herds(file, meanings, _unread), .. Unread(_unread, meanings)];
    }

    /// <summary>Columns whose cells tell what happened, whatever their headings are: nobody is offered to leave these out unseen.</summary>
    private IEnumerable<SuggestedLine> Telling()
    {
        foreach (var column in file.Columns.Where(column => _unread.Contains(column.Heading)))
        {
            var remark = column.HoldsDates ? "days: what happened on them?" : FloorHeadings.TellOfCalves(column.Texts) ? "in calf or not: by which test, of which day?" : null;
            if (remark is not null && _unread.Remove(column.Heading))
            {
                yield return new SuggestedLine(Indent, $"FILL-IN in {NameText.Text(column.Heading)}", IsOpen: true, remark);
            }
        }
    }

    /// <summary>The line that says which herd a row is of, where a column is headed so; its heading is taken from those of which nobody can tell.</summary>
    public static IEnumerable<SuggestedLine> Herds(SuggestedFile file, HeadingMeanings meanings, List<string> unread)
    {
        foreach (var column in file.Columns.Where(column => column.Filled > 0 && unread.Contains(column.Heading) && meanings.IsHeaded(column, "herd")).Take(1))
        {
            unread.Remove(column.Heading);
            yield return new SuggestedLine(Indent, $"herd in {NameText.Text(column.Heading)}", IsOpen: true, $"{(column.Texts.Count == 1 ? "1 herd" : $"{column.Texts.Count} herds")}: each is read for itself, with `--herd`");
        }
    }

    /// <summary>The line that leaves columns out; one of its own for each whose heading may tell what holds a cow back: left out unseen, it would set a promise aside.</summary>
    public static IEnumerable<SuggestedLine> Unread(IEnumerable<string> headings, HeadingMeanings meanings)
    {
        var told = headings.ToLookup(heading => FloorHeadings.MayBe(heading, meanings.Vocabulary)?.Name);
        foreach (var kind in told.Where(kind => kind.Key is not null))
        {
            foreach (var heading in kind)
            {
                yield return new SuggestedLine(Indent, $"FILL-IN in {NameText.Text(heading)}", IsOpen: true, $"may tell of {kind.Key}; if it does not: `leave out columns {NameText.Text(heading)}` here, and `leave out {NameText.Exact(heading)}, which is not {kind.Key}` above");
            }
        }

        if (told[null].Any())
        {
            yield return new SuggestedLine(Indent, $"leave out columns {string.Join(", ", told[null].Select(NameText.Text))}", IsOpen: true, "nobody can tell what they say; without this line each is told of");
        }
    }

    /// <summary>Adds the lines of a column; false where its cells are not what its heading says.</summary>
    private bool Add(ColumnProfile column, string what)
    {
        switch (what)
        {
            case "born":
                return Add(column, what, column.HoldsMostlyDates || column.HoldsNumbers);
            case "sex":
                return AddValues(column, what, ["F", "M", "steer"]);
            case "mob":
                return Add(column, what, isFit: true);
            case "parity on":
                return Add(column, what, column.HoldsDates);
            case "parity":
                return column.HoldsParities && Add(new SuggestedLine(
                    Indent, $"parity in {NameText.Text(column.Heading)}{(_said.Contains("parity on") || file.Columns.Any(other => meanings.Declared(other, Landed) == "parity on") ? "" : $", as at {latest ?? "FILL-IN"}")}",
                    IsOpen: true, "of which day? the file does not say"));
        }

        return meanings.Vocabulary.FindFact(what) is { } fact ? AddFact(column, fact) : meanings.Vocabulary.FindKind(what) is { } kind && AddKind(column, kind);
    }

    private bool AddFact(ColumnProfile column, Fact fact) => fact.Type switch
    {
        FactType.OneOf => AddValues(column, fact.Name, fact.Values),
        FactType.Date => Add(column, fact.Name, column.HoldsDates),
        FactType.Number or FactType.Amount => column.Texts.Keys.Any(ColumnProfile.IsNumber) && Add(new SuggestedLine(
            Indent, $"{NameText.Exact(fact.Name)} in {NameText.Text(column.Heading)}{(fact.Unit is { } unit ? $", in {unit.Symbol}" : "")}", IsOpen: fact.Unit is not null || !column.HoldsNumbers,
            column.Texts.Keys.FirstOrDefault(cell => !ColumnProfile.IsNumber(cell)) is { } wrong ? $"{Quoted.Of(wrong)} is no number" : fact.Unit is null ? null : "the file does not say the unit")),
        _ => Add(column, fact.Name, isFit: true),
    };

    private bool AddKind(ColumnProfile column, Kind kind)
    {
        if (kind is EventKind)
        {
            if (!Add(column, kind.Name, column.HoldsDates))
            {
                return false;
            }

            AddLast(kind, $"in {NameText.Text(column.Heading)}");
            return true;
        }

        if (column.HoldsDates)
        {
            // It is the day of a result; the column of the result itself asks for it.
            _said.Remove(kind.Name);
            return false;
        }

        ColumnProfile[] days = [.. file.Columns.Where(other => other.HoldsDates && meanings.Declared(other, Landed) is { } named && meanings.Vocabulary.FindKind(named)?.Id == kind.Id)];
        var isSure = days.Length == 1 && meanings.Declared(column, Landed) is not null;
        foreach (var day in days.Length > 0 ? days : [.. file.Columns.Where(other => other.HoldsDates && (meanings.Declared(other, Landed) ?? meanings.Hinted(other)) != "born")])
        {
            var where = $"in {NameText.Text(column.Heading)}{(kind is MeasureKind { Unit: { } unit } ? $", in {unit.Symbol}" : "")}, dated in {NameText.Text(day.Heading)}";
            _lines.Add(new SuggestedLine(Indent, $"{NameText.Exact(kind.Name)} {where}", IsOpen: !isSure || kind is MeasureKind { Unit: not null }, $"{column.Filled} cells"));
            AddLast(kind, where);
        }

        _lines.AddRange(kind is TestKind test ? AnswerHints.Bullets(column, test, Bullet) : []);
        return true;
    }

    /// <summary>Adds the line that says more: that none came after it. Of who comes and goes, and of what whole mobs share, it cannot be said.</summary>
    private void AddLast(Kind kind, string where)
    {
        if (kind is EventKind { Effect: not HerdEffect.None } or EventKind { IsMobMove: true } || meanings.Vocabulary.Spells.Any(spell => spell.Until.Name != "calving" && (spell.From.Id == kind.Id || spell.Until.Id == kind.Id)))
        {
            return;
        }

        _lines.Add(new SuggestedLine(Indent, $"last {NameText.Exact(kind.Name)} {where}", IsOpen: true, "in its place, if none came after it; then write behind `from`: as at a day"));
    }

    /// <summary>A column of one of a few values; texts that are none of them are told of.</summary>
    private bool AddValues(ColumnProfile column, string what, IReadOnlyList<string> values)
    {
        if (column.Filled == 0)
        {
            return false;
        }

        _lines.Add(new SuggestedLine(Indent, $"{NameText.Exact(what)} in {NameText.Text(column.Heading)}"));
        _lines.AddRange(ValueBullets(column, values));
        return true;
    }

    /// <summary>A bullet for each text that is none of a few values, and each value that it may be.</summary>
    public static IEnumerable<SuggestedLine> ValueBullets(ColumnProfile column, IReadOnlyList<string> values)
    {
        foreach (var (text, count) in column.Texts.OrderByDescending(text => text.Value).ThenBy(text => text.Key, StringComparer.Ordinal).Take(CodeLines.Most))
        {
            if (values.Any(value => NameFolding.Fold(value) == NameFolding.Fold(text)))
            {
                continue;
            }

            var alike = values.Where(value => char.ToLowerInvariant(value[0]) == char.ToLowerInvariant(text[0])).ToList();
            foreach (var value in (alike.Count > 0 || values.Count > FewValues ? alike : [.. values]).Append("blank"))
            {
                yield return new SuggestedLine(Bullet, $"- {NameText.Text(text)} is {NameText.Exact(value)}", IsOpen: true, count == 1 ? "1 cell" : $"{count} cells");
            }
        }
    }

    private bool Add(ColumnProfile column, string what, bool isFit) => isFit && Add(new SuggestedLine(Indent, $"{NameText.Exact(what)} in {NameText.Text(column.Heading)}"));

    private bool Add(SuggestedLine line)
    {
        _lines.Add(line);
        return true;
    }
}
