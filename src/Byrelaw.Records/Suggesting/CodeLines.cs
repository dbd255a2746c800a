using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>Bullets for the texts of the column that says what happened.</summary>
internal sealed class CodeLines(SuggestedFile file, ColumnProfile codes, ColumnProfile? animals, ColumnProfile? values, HeadingMeanings meanings)
{
    /// <summary>Texts of one column that are told of; the rest is counted.</summary>
    public const int Most = 80;

    private const int Bullet = 6;

    /// <summary>All of them, the most frequent text first.</summary>
    public IEnumerable<SuggestedLine> Make()
    {
        foreach (var text in codes.Texts.OrderByDescending(text => text.Value).ThenBy(text => text.Key, StringComparer.Ordinal).Select(text => text.Key).Take(Most))
        {
            foreach (var line in Lines(text))
            {
                yield return line;
            }
        }

        if (codes.Texts.Count > Most)
        {
            yield return new SuggestedLine(Bullet, $"- {NameText.Text(codes.Texts.Keys.Except(codes.Texts.OrderByDescending(text => text.Value).Take(Most).Select(text => text.Key)).First())} is left out", IsOpen: true, $"and {codes.Texts.Count - Most - 1} more such texts");
        }
    }

    private IEnumerable<SuggestedLine> Lines(string text)
    {
        SourceRow[] rows = [.. file.Table.Rows.Where(row => row.Flaw is null && row[codes.Index] == text)];
        var told = Told(rows);
        if (meanings.Vocabulary.FindKind(text) is { } kind)
        {
            return kind is EventKind ? [] : [Line(text, kind, IsOpen(kind, rows), told)];
        }

        List<Kind> hinted = [.. meanings.Vocabulary.Hints.Where(hint => HintedWord.StandsIn(text, hint.Word)).Select(hint => hint.Kind).Distinct()];
        hinted.AddRange(hinted.Count > 0 ? [] : Abbreviations.KindsFor(text, meanings.Vocabulary));
        if (hinted.Count == 0 && NearestName.OnlyOne(text, meanings.Vocabulary.Kinds.SelectMany(one => one.AlsoNames.Prepend(one.Name))) is { } near)
        {
            hinted.Add(meanings.Vocabulary.FindKind(near)!);
        }

        IEnumerable<SuggestedLine> lines = hinted.Select(one => Line(text, one, isOpen: true, told));
        return hinted.Exists(one => one.Name is "mating" or "bull in") ? lines : lines.Append(new SuggestedLine(Bullet, $"- {NameText.Text(text)} is left out", IsOpen: true, told));
    }

    private SuggestedLine Line(string text, Kind kind, bool isOpen, string told)
    {
        var answer = kind is TestKind test ? AnswerIn(text, test) : null;
        var more = answer is not null ? $", {NameText.Exact(answer)}" : kind is not EventKind && values is { } column ? $", value in {NameText.Text(column.Heading)}" : "";
        var unit = answer is null && kind is MeasureKind { Unit: { } own } && values is not null ? $", in {own.Symbol}" : "";
        return new SuggestedLine(Bullet, $"- {NameText.Text(text)} is {NameText.Exact(kind.Name)}{more}{unit}", isOpen, told);
    }

    /// <summary>Whether somebody must look: where no column has the results, the unit is nowhere, or a result is none of its kind.</summary>
    private bool IsOpen(Kind kind, SourceRow[] rows) => values is not { } column || kind switch
    {
        MeasureKind { Unit: not null } => true,
        MeasureKind => !Array.TrueForAll(rows, row => ColumnProfile.IsNumber(row[column.Index])),
        TestKind test => !Array.TrueForAll(rows, row => test.Answers.Any(answer => NameFolding.Fold(answer) == NameFolding.Fold(row[column.Index]))),
        _ => false,
    };

    /// <summary>The answer that a sign at the end of a text may stand for: <c>PD+</c>, <c>PD-</c>.</summary>
    private static string? AnswerIn(string text, TestKind test) => text[^1] switch
    {
        '+' => test.Answers.FirstOrDefault(answer => NameFolding.Fold(answer) is "pregnant" or "positive"),
        '-' => test.Answers.FirstOrDefault(answer => NameFolding.Fold(answer) is "empty" or "negative"),
        _ => null,
    };

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
