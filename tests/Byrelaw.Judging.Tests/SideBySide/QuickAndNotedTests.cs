using Byrelaw.Judging.Criteria;
using Byrelaw.Judging.Explaining;
using Byrelaw.Records.Herds;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Plain cases are decided the quick way where nobody asks why. It must say, day by day, what the code that writes down why says.</summary>
public sealed class QuickAndNotedTests
{
    [Fact]
    public void The_quick_way_says_what_is_written_down() => Each.Hold(
        Gen.Frequency((2, JudgingCase.Any), (1, JudgingCase.Doubtful), (1, JudgingCase.Lately)), Cases.Count / 2, Differs, one => one.ToString());

    private static string? Differs(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn);
        var days = new Judge(one.Rulebook, herd, one.KnownOn).Days;
        var first = Day.Number(herd.KnownDay) - 20;
        var leaves = one.Rulebook.Rules.Select(rule => rule.Needs).Concat(one.Rulebook.Prefers.Select(prefer => prefer.Condition))
            .SelectMany(condition => condition.Leaves(one.Rulebook)).Distinct();
        foreach (var leaf in leaves)
        {
            // Criteria remember: each way has its own.
            var (quick, noted) = (new CriterionCompiler(days, one.Rulebook).Compile(leaf), new CriterionCompiler(days, one.Rulebook).Compile(leaf));
            for (var animal = 0; animal < herd.Count; animal++)
            {
                var stands = int.MinValue;
                var answer = default(Truths.Kleene);
                for (var day = first; day < first + 110; day++)
                {
                    if (day > stands)
                    {
                        stands = int.MaxValue;
                        answer = quick.On(animal, day, ref stands, null);
                    }

                    var (until, notes) = (int.MaxValue, new Notes(days, animal));
                    var said = noted.On(animal, day, ref until, notes);
                    if (said != answer)
                    {
                        return $"{leaf.Subject}, {herd.Numbers[animal]} on {Day.Date(day)}: {Said(answer)}, written down {Said(said)}";
                    }

                    if (notes.Findings is not [var finding] || finding.Truth != said.Assumed || !ReferenceEquals(finding.Condition, leaf))
                    {
                        return $"{leaf.Subject}, {herd.Numbers[animal]} on {Day.Date(day)}: {notes.Findings.Length} findings";
                    }
                }
            }
        }

        return null;
    }

    private static string Said(Truths.Kleene answer) => $"{answer.Assumed}, strictly {answer.Strict}{(answer.IsPending ? ", a result is awaited" : "")}";
}
