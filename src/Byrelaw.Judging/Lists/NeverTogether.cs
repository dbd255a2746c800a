namespace Byrelaw.Judging.Lists;

/// <summary>Finds two rules that each hold on a later stretch, but never both on one.</summary>
internal static class NeverTogether
{
    public static ImmutableArray<string> Find(IReadOnlyList<RuleJudgement> rules, JudgingDays days)
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
                if (!HoldTogether(turning[i].Timeline, turning[j].Timeline, days))
                {
                    return [turning[i].Name, turning[j].Name];
                }
            }
        }

        return [];
    }

    private static bool HoldTogether(Timeline a, Timeline b, JudgingDays days)
    {
        var start = days.First + 1;
        for (var day = start; day <= Day.Number(a.Last); day++)
        {
            var date = Day.Date(day);
            if (a.At(date).Truth != Truth.True || b.At(date).Truth != Truth.True)
            {
                start = day + 1;
            }
            else if (day >= days.EndOfStretch(start))
            {
                return true;
            }
        }

        return false;
    }
}
