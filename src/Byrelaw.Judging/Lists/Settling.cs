namespace Byrelaw.Judging.Lists;

/// <summary>
/// Which records would settle an Ask: those behind the findings that are not known and decide a rule
/// that is not known. Each such record is in some smallest set that changes the answer.
/// </summary>
internal sealed class Settling(ListPlan plan, int length)
{
    public ImmutableArray<Missing> Find(int animal, IEnumerable<RuleJudgement> rules, Conclusion conclusion)
    {
        var missing = new List<Missing>();
        if (conclusion.NotBefore == int.MaxValue)
        {
            foreach (var rule in rules)
            {
                if (rule.Answer == RuleAnswer.NotKnown && rule.Rule?.OnTheDay != true)
                {
                    AddGate(animal, rule, missing);
                    Add(rule.Findings, missing);
                }
            }
        }
        else
        {
            // On a range of judging days what is missing may be missing on a later one of them only.
            for (var day = conclusion.NotBefore; day < conclusion.NotBefore + length && missing.Count == 0; day++)
            {
                OnDay(animal, day, missing);
            }
        }

        return [.. missing.Distinct()];
    }

    /// <summary>She fails on the judging days; what is not known on the first later day on which she may pass.</summary>
    private void OnDay(int animal, int day, List<Missing> missing)
    {
        foreach (var rule in plan.Rules)
        {
            var until = int.MaxValue;
            if (!rule.Rule.OnTheDay && !rule.Rule.IsBroken && rule.On(animal, day, ref until, null).Assumed == Truth.Unknown)
            {
                var notes = new Notes(plan.Days, animal);
                rule.Plain(animal, day, out _, ref until, notes);
                Add(notes.Findings, missing);
            }
        }
    }

    private static void Add(ImmutableArray<Finding> findings, List<Missing> missing)
    {
        foreach (var finding in findings)
        {
            if (finding.Decides)
            {
                missing.AddRange(finding.Missing);
            }
        }
    }

    private void AddGate(int animal, RuleJudgement rule, List<Missing> missing)
    {
        var herd = plan.Days.Herd;
        switch (rule.Gate)
        {
            case Gate.InTheHerd:
                var notes = new Notes(plan.Days, animal);
                notes.Begin();
                foreach (var kind in herd.Vocabulary.Kinds)
                {
                    if (kind is Language.Rulebooks.Words.EventKind { Effect: not Language.Rulebooks.Words.HerdEffect.None })
                    {
                        notes.Unreadable(animal, kind.Id, Day.Start, Day.End);
                    }
                }

                missing.AddRange(notes.MissingSoFar);
                break;
            case Gate.OfTheRightSort when herd.Sexes[animal] == Sex.NotKnown:
                missing.Add(new Missing(MissingReason.FactMissing, "sex", null, null, SettledBy.Yards));
                break;
            case Gate.OfTheRightSort:
                missing.Add(new Missing(MissingReason.NeverRecorded, "calving", null, null, SettledBy.Yards));
                break;
        }
    }
}
