using Byrelaw.Language.Canonical;
using Byrelaw.Language.Units;
using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Suggesting;

/// <summary>Bullets for the texts of the column that says what happened.</summary>
internal sealed class CodeLines(SuggestedFile file, ColumnProfile codes, ColumnProfile? animals, ResultColumns results, HeadingMeanings meanings)
{
    /// <summary>Texts of one column that are told of; the rest is counted.</summary>
    public const int Most = 80;

    private const int Bullet = 6;
    private const int MostKnown = 12;

    /// <summary>What is read without a word of anybody's, for a remark; null for nothing.</summary>
    public string? Known()
    {
        string[] known = [.. InOrder().Where(text => meanings.Vocabulary.FindKind(text) is EventKind).Select(Quoted.Of)];
        return known.Length == 0 ? null : $"read as they are: {Phrases.And([.. known.Take(MostKnown), .. known.Length > MostKnown ? [$"{known.Length - MostKnown} more"] : Array.Empty<string>()])}";
    }

    /// <summary>All of them, the most frequent text first.</summary>
    public IEnumerable<SuggestedLine> Make()
    {
        foreach (var line in InOrder().Take(Most).SelectMany(Lines))
        {
            yield return line;
        }

        if (codes.Texts.Count > Most)
        {
            yield return new SuggestedLine(Bullet, $"- {NameText.Text(InOrder().ElementAt(Most))} is left out", IsOpen: true, (codes.Texts.Count - Most - 1) switch
            {
                0 => null,
                1 => "and 1 more such text",
                var more => $"and {more} more such texts",
            });
        }
    }

    private IEnumerable<string> InOrder() => codes.Texts.OrderByDescending(text => text.Value).ThenBy(text => text.Key, StringComparer.Ordinal).Select(text => text.Key);

    private IEnumerable<SuggestedLine> Lines(string text)
    {
        SourceRow[] rows = [.. file.Table.Rows.Where(row => row.Flaw is null && row[codes.Index] == text)];
        var told = Told(rows);
        if (meanings.Vocabulary.FindKind(text) is { } kind)
        {
            return kind is EventKind { IsMobMove: false } ? [] : [Line(text, kind, IsOpen(kind, rows), rows, told)];
        }

        var hinted = KindsFor(text);
        List<SuggestedLine> lines = [.. hinted.Select(one => Line(text, one, isOpen: true, rows, told))];
        if (hinted.Exists(one => one.Name == "bull in") && NaturalService(text) is { } natural)
        {
            lines.Insert(0, new SuggestedLine(Bullet, natural, IsOpen: true, told));
        }

        if (hinted.Count == 0)
        {
            lines.Add(new SuggestedLine(Bullet, $"- {NameText.Text(text)} is FILL-IN", IsOpen: true, $"{told}: what is it?"));
        }

        return hinted.Exists(one => one.Name is "mating" or "bull in") ? lines : lines.Append(new SuggestedLine(Bullet, $"- {NameText.Text(text)} is left out", IsOpen: true, told));
    }

    private List<Kind> KindsFor(string text)
    {
        if (KindOfFile.IsMove(text))
        {
            return [meanings.Vocabulary.MobMove];
        }

        List<Kind> hinted = [.. meanings.Vocabulary.Hints.Where(hint => HintedWord.StandsIn(text, hint.Word)).Select(hint => hint.Kind).Distinct()];
        hinted.AddRange(hinted.Count > 0 ? [] : meanings.Vocabulary.Kinds.OfType<TestKind>().Where(test => test.Answers.Any(answer => NameFolding.Fold(answer) is "pregnant" or "empty") && AnswerHints.Find(text, test) is { } answer && test.Answers.Contains(answer)));
        hinted.AddRange(hinted.Count > 0 || UnitIn(text) is not { } unit ? [] : meanings.Vocabulary.Kinds.OfType<MeasureKind>().Where(measure => measure.Unit is { } own && own.Quantity == unit.Quantity));
        hinted.AddRange(hinted.Count > 0 ? [] : Abbreviations.KindsFor(text, meanings.Vocabulary));
        if (hinted.Count == 0 && NearestName.OnlyOne(text, meanings.Vocabulary.Kinds.SelectMany(one => one.AlsoNames.Prepend(one.Name))) is { } near)
        {
            hinted.Add(meanings.Vocabulary.FindKind(near)!);
        }

        return hinted;
    }

    /// <summary>A service by a bull, where the farm's words can say it of a mating; not of a bull put with a mob.</summary>
    private string? NaturalService(string text) =>
        meanings.Vocabulary.FindKind("mating") is { } mating && !HintedWord.StandsIn(text, "run with") && mating.Details.Any(detail => detail.Name == "method" && detail.Values.Contains("natural"))
            ? $"- {NameText.Text(text)} is mating, method is natural" : null;

    private SuggestedLine Line(string text, Kind kind, bool isOpen, SourceRow[] rows, string told)
    {
        var answer = kind is TestKind test ? AnswerHints.Find(text, test) is { } found && test.Answers.Contains(found) ? found : null : null;
        var column = kind is EventKind { IsMobMove: false } || answer is not null ? null : results.For(kind, rows);
        var unit = kind is MeasureKind { Unit: { } own } && (column is not null || results.Declared is not null) ? UnitIn(text) ?? (column is null ? null : own) : null;
        return new SuggestedLine(
            Bullet, $"- {NameText.Text(text)} is {NameText.Exact(kind.Name)}{(answer is null ? "" : $", {NameText.Exact(answer)}")}{(column is null ? "" : $", value in {NameText.Text(column.Heading)}")}{(unit is null ? "" : $", in {unit.Symbol}")}", isOpen, told);
    }

    /// <summary>Whether somebody must look: where no column has the results, the unit is nowhere, or a result is none of its kind.</summary>
    private bool IsOpen(Kind kind, SourceRow[] rows) => results.For(kind, rows) is not { } column || kind switch
    {
        MeasureKind { Unit: not null } => true,
        MeasureKind => !Array.TrueForAll(rows, row => ColumnProfile.IsNumber(row[column.Index])),
        TestKind test => !Array.TrueForAll(rows, row => test.Answers.Any(answer => NameFolding.Fold(answer) == NameFolding.Fold(row[column.Index]))),
        _ => true,
    };

    /// <summary>The unit that a text names, such as <c>KG</c> or <c>Wt lbs</c>.</summary>
    private static Unit? UnitIn(string text) => text.Split([' ', '_', '(', ')', '.'], StringSplitOptions.RemoveEmptyEntries).Where(word => word.Length > 1).Select(UnitTable.Find).FirstOrDefault(unit => unit is not null);

    private string Told(SourceRow[] rows)
    {
        var count = rows.Length == 1 ? "1 row" : $"{rows.Length} rows";
        if (animals is null)
        {
            return count;
        }

        var different = rows.Select(row => row[animals.Index]).Distinct().Count();
        return $"{count}, {different} {(different == 1 ? "animal" : "animals")}";
    }
}
