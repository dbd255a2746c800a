namespace Byrelaw.Judging.Lists;

/// <summary>
/// Which records would settle what is not known: those behind the findings that are not known and decide a rule
/// that is not known. Each such record is in some smallest set that changes the answer.
/// </summary>
internal sealed class Settling(ListPlan plan, JudgingDays days)
{
    /// <summary>Of an Ask: what is not known on the judging days.</summary>
    public ImmutableArray<Missing> OnJudgingDays(int animal, IEnumerable<RuleJudgement> rules)
    {
        var missing = new List<Missing>();
        foreach (var rule in rules)
        {
            if (rule.Answer == RuleAnswer.NotKnown && rule.Rule?.OnTheDay != true)
            {
                AddGate(animal, rule.Gate, missing);
                Add(rule.Findings, missing);
            }
        }

        return [.. missing.Distinct()];
    }

    /// <summary>Of an Ask: each rule that is not known, with the ways to settle it.</summary>
    public ImmutableArray<OpenQuestion> Questions(int animal, IEnumerable<RuleJudgement> rules)
    {
        var open = ImmutableArray.CreateBuilder<OpenQuestion>();
        foreach (var rule in rules.Where(rule => rule.Answer == RuleAnswer.NotKnown && rule.Rule?.OnTheDay != true))
        {
            var all = new List<Missing>();
            AddGate(animal, rule.Gate, all);
            Add(rule.Findings, all);
            if (all.Count > 0)
            {
                open.Add(new OpenQuestion(rule.Name, rule.Ways.IsEmpty ? [[.. all.Distinct()]] : rule.Ways));
            }
        }

        return open.ToImmutable();
    }

    /// <summary>Of a Later: what is not known on the first later stretch on which no rule fails. What is missing may be missing on a later day of it only.</summary>
    public ImmutableArray<Missing> OnStretch(int animal, IEnumerable<RuleJudgement> rules, int from)
    {
        var (missing, to) = (new List<Missing>(), days.EndOfStretch(from));
        foreach (var gate in rules.Where(rule => rule.Gate != Gate.None))
        {
            if (NotKnownOn(gate.Gate == Gate.InTheHerd ? plan.Presence : plan.Sort, animal, from, to) is not null)
            {
                AddGate(animal, gate.Gate, missing);
            }
        }

        foreach (var rule in plan.Rules.Concat(plan.Floor.LiesUnder ? plan.Floor.Rules : []))
        {
            if (!rule.Rule.OnTheDay && !rule.Rule.IsBroken && NotKnownOn(rule, animal, from, to) is { } day)
            {
                var notes = new Notes(plan.Days, animal);
                var until = int.MaxValue;
                rule.Plain(animal, rule.DayThatShows(Truth.Unknown, animal, day, to), out _, ref until, notes);
                Add(notes.Findings, missing);
            }
        }

        return [.. missing.Distinct()];
    }

    /// <summary>The first day of a stretch on which something is not known.</summary>
    private static int? NotKnownOn(Criterion criterion, int animal, int from, int to)
    {
        for (var day = from; day <= to; day++)
        {
            var until = int.MaxValue;
            if (criterion.On(animal, day, ref until, null).Assumed == Truth.Unknown)
            {
                return day;
            }
        }

        return null;
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

    private void AddGate(int animal, Gate gate, List<Missing> missing)
    {
        var herd = plan.Days.Herd;
        switch (gate)
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
