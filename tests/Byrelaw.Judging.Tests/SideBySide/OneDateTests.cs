namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Asking for a whole herd at once is quicker, and must say the same as asking for each animal.</summary>
public sealed class OneDateTests
{
    [Fact]
    public void A_herd_asked_at_once_says_what_each_timeline_says_on_that_day() => Each.Hold(
        JudgingCase.Any, Cases.Count / 2, Differs, one => one.ToString());

    private static string? Differs(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn);
        var judge = new Judge(one.Rulebook, herd, one.KnownOn);
        foreach (var choice in one.Rulebook.Programme!.Choices)
        {
            var truths = judge.TruthsOn(choice, choice.JudgedTo);
            for (var animal = 0; animal < herd.Count; animal++)
            {
                var each = judge.JudgeOne(choice, animal).Rules
                    .Where(rule => rule.Rule is null || !rule.Rule.OnTheDay || rule.Answer == RuleAnswer.Broken).ToList();
                for (var rule = 0; rule < each.Count && rule < truths.Length; rule++)
                {
                    if (truths[rule][animal] != each[rule].Timeline.At(choice.JudgedTo).Truth)
                    {
                        return $"{choice.List}, {herd.Numbers[animal]}, {each[rule].Name}: {truths[rule][animal]} at once";
                    }
                }
            }
        }

        return null;
    }
}
