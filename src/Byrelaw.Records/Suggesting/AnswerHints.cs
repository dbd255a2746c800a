using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>Which answer of a test a text of people's files may stand for: <c>Preg</c>, <c>PD+</c>, <c>Open</c>. They feed suggestions; nothing is read by them. Common practice, no source.</summary>
internal static class AnswerHints
{
    private const string Waits = "pending";

    private static readonly ImmutableArray<(string Answer, ImmutableArray<string> Texts)> All =
    [
        ("empty", ["empty", "open", "e", "o", "mt", "not in calf", "not pregnant", "not preg", "non pregnant", "barren", "negative", "neg", "pd neg", "no calf"]),
        ("pregnant", ["pregnant", "preg", "p", "in calf", "positive", "pos", "pd pos", "twins"]),
        ("positive", ["positive", "pos"]),
        ("negative", ["negative", "neg"]),
        (Waits, ["pending", "recheck", "re check", "retest", "doubtful", "unsure", "inconclusive"]),
    ];

    /// <summary>The answer; <c>pending</c> where none is known yet; null for no hint.</summary>
    public static string? Find(string text, TestKind test)
    {
        var folded = NameFolding.Fold(text);
        if (test.Answers.FirstOrDefault(answer => NameFolding.Fold(answer) == folded) is { } own)
        {
            return own;
        }

        var words = string.Join(' ', folded.TrimEnd('+', '-', '?').Split([' ', '_', '-', '.', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries));
        foreach (var (answer, texts) in All)
        {
            if (texts.Contains(words) && folded[^1] is not ('+' or '-' or '?') && (answer == Waits ? answer : Declared(test, answer)) is { } found)
            {
                return found;
            }
        }

        return folded[^1] switch
        {
            '+' => Declared(test, "pregnant") ?? Declared(test, "positive"),
            '-' => Declared(test, "empty") ?? Declared(test, "negative"),
            '?' => Waits,
            _ => null,
        };
    }

    /// <summary>The test of whose answers most rows of a column say one: the only such test, for many have a positive answer.</summary>
    public static TestKind? TestIn(ColumnProfile column, Vocabulary vocabulary)
    {
        var tests = vocabulary.Kinds.OfType<TestKind>().Where(test => Declared(test, "pregnant") is not null || Declared(test, "empty") is not null || column.Texts.Keys.Any(text => test.Answers.Contains(text)))
            .Where(test => column.Texts.Where(text => Find(text.Key, test) is { } answer && answer != Waits).Sum(text => text.Value) * 2 > column.Filled).ToList();
        return tests is [var only] ? only : null;
    }

    /// <summary>A bullet for each text that is no answer as it stands.</summary>
    public static IEnumerable<SuggestedLine> Bullets(ColumnProfile column, TestKind test, int indent) =>
        from text in column.Texts.OrderByDescending(text => text.Value).ThenBy(text => text.Key, StringComparer.Ordinal).Take(CodeLines.Most)
        where !test.Answers.Any(answer => NameFolding.Fold(answer) == NameFolding.Fold(text.Key)) && !PendingCell.Is(Encoding.UTF8.GetBytes(text.Key))
        from answer in Answers(text.Key, test)
        select new SuggestedLine(indent, $"- {NameText.Text(text.Key)} is {NameText.Exact(answer)}", IsOpen: true, text.Value == 1 ? "1 cell" : $"{text.Value} cells");

    private static IEnumerable<string> Answers(string text, TestKind test) => Find(text, test) is { } hinted ? [hinted]
        : test.Answers.Where(answer => char.ToLowerInvariant(answer[0]) == char.ToLowerInvariant(text[0])).DefaultIfEmpty(test.Answers[0]).Append("blank");

    private static string? Declared(TestKind test, string answer) => test.Answers.FirstOrDefault(one => NameFolding.Fold(one) == answer);
}
