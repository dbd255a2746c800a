namespace Byrelaw.Judging.Lists;

/// <summary>Finds two rules that each hold on later days, but never on the same ones.</summary>
internal static class NeverTogether
{
    public static ImmutableArray<string> Find(IReadOnlyList<RuleJudgement> rules, LocalDate judged, int length)
    {
        var turning = rules.Where(rule => rule.Rule?.OnTheDay != true && rule.Timeline.Stretches.Any(s => s.Truth == Truth.True)).ToList();
        if (rules.Any(rule => rule.Answer == RuleAnswer.NotMet && rule.TurnsOn is null && rule.Rule?.OnTheDay != true))
        {
            return [];
        }

        for (var i = 0; i < turning.Count; i++)
        {
            for (var j = i + 1; j < turning.Count; j++)
            {
                if (!HoldTogether(turning[i].Timeline, turning[j].Timeline, judged, length))
                {
                    return [turning[i].Name, turning[j].Name];
                }
            }
        }

        return [];
    }

    private static bool HoldTogether(Timeline a, Timeline b, LocalDate judged, int length)
    {
        var inARow = 0;
        for (var day = judged.PlusDays(1); day <= a.Last; day = day.PlusDays(1))
        {
            inARow = a.At(day).Truth == Truth.True && b.At(day).Truth == Truth.True ? inARow + 1 : 0;
            if (inARow >= length)
            {
                return true;
            }
        }

        return false;
    }
}
