namespace Byrelaw.Workshop.Tests.Typing;

/// <summary>
/// Two hundred typing mistakes in the base rules, of those that make a wrong file. For most, the first message stands at the
/// mistake and its correction gives back the very rulebook. Mistakes that make another good file are beside the count: that
/// they were made, only the worked examples or a reader can tell.
/// </summary>
public sealed class TypingMistakeTests
{
    private const int Mistakes = 200;
    private const int Near = 2;

    private static readonly (string Path, string Text)[] Good =
        [.. Directory.EnumerateFiles(Repository.At("rulesets"), "*.byre").Order(StringComparer.Ordinal).Select(path => ("rulesets/" + Path.GetFileName(path), File.ReadAllText(path)))];

    private static readonly Dictionary<string, string> Canonical = Good.ToDictionary(file => file.Path, file => CanonicalText.Of(Read(file.Path, file.Text).Rulebook));

    [Fact]
    public void The_first_message_stands_at_most_mistakes_and_its_help_mends_them()
    {
        var random = new Random(20261019);
        var (wrong, unseen) = (new List<(TypingMistake Mistake, RulebookReading Reading)>(), new List<TypingMistake>());
        while (wrong.Count < Mistakes)
        {
            var mistake = TypingMistake.In(Good, random);
            var reading = Read(mistake.Path, mistake.Text);
            if (reading.Problems.IsEmpty)
            {
                unseen.Add(mistake);
            }
            else
            {
                wrong.Add((mistake, reading));
            }
        }

        var seen = wrong.AsParallel().AsOrdered().Select(found => new Outcome(found.Mistake, found.Reading.Corrected(found.Reading.Problems[0]))).ToList();

        TestContext.Current.TestOutputHelper?.WriteLine(Report(seen, unseen));
        seen.Count(outcome => outcome is { IsNear: true, IsMended: true }).ShouldBeGreaterThanOrEqualTo(Mistakes * 79 / 100);
        seen.Count(outcome => outcome.IsNear).ShouldBeGreaterThanOrEqualTo(Mistakes * 95 / 100);
    }

    private static string Report(List<Outcome> seen, List<TypingMistake> unseen)
    {
        var rest = seen.Where(outcome => outcome is not { IsNear: true, IsMended: true }).ToList();
        var report = new StringBuilder();
        report.Append(CultureInfo.InvariantCulture, $"{seen.Count} mistakes that make a wrong file\n");
        report.Append(CultureInfo.InvariantCulture, $"{seen.Count(outcome => outcome.IsNear)} first messages within {Near} words of the mistake\n");
        report.Append(CultureInfo.InvariantCulture, $"{seen.Count - rest.Count} of these with a correction that gives back the very rulebook\n");
        report.Append(CultureInfo.InvariantCulture, $"{unseen.Count} more mistakes, beside the count, that make another file without a problem\n");
        report.Append("\nNot mended, or not near:\n\n");
        foreach (var outcome in rest)
        {
            report.Append(CultureInfo.InvariantCulture, $"{outcome.Mistake.Path}, {outcome.Mistake.What}{(outcome.IsNear ? "" : ", not near")}\n{DiagnosticText.Of(outcome.First)}\n");
        }

        report.Append("Without a problem:\n\n");
        unseen.ForEach(mistake => report.Append(CultureInfo.InvariantCulture, $"{mistake.Path}, {mistake.What}\n"));
        return report.ToString();
    }

    private static RulebookReading Read(string path, string text)
    {
        var files = new RuleFilesInMemory();
        foreach (var (good, own) in Good)
        {
            files.Add(good, good == path ? text : own);
        }

        return RulebookReader.Read(path, files)!;
    }

    private sealed record Outcome(TypingMistake Mistake, Diagnostic First)
    {
        public bool IsNear { get; } = First.File == Mistake.Path
            && Mistake.WordsTo(new SourceFile("x", Mistake.Text).StartOf(First.Line) + First.Column - 1, First.Length) <= Near;

        /// <summary>Whether the correction leads to the same rulebook that the file without the mistake gives.</summary>
        public bool IsMended { get; } = First.Correction is { } correction
            && CanonicalText.Of(Read(Mistake.Path, correction.In(Mistake.Text)).Rulebook) == Canonical[Mistake.Path];
    }
}
