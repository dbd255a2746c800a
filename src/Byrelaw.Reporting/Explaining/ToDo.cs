namespace Byrelaw.Reporting.Explaining;

/// <summary>The single thing to do with an animal now.</summary>
public static class ToDo
{
    /// <summary>One sentence or two.</summary>
    public static string Of(AnimalReport report)
    {
        var (list, animal) = (report.On, report.Animal);
        if (list.List.IsBroken)
        {
            return "Mend the rule files first: until then nobody on this list is Ready.";
        }

        return animal.Answer switch
        {
            var answer when answer.MayBeUsed() && list.IsForTreatment =>
                $"Show her to the vet on {list.Long(list.List.Choice.JudgedFrom)}, and look up her status again that day: nothing here orders a treatment.",
            Answer.Ready => $"Keep her as she is until {list.Long(list.List.Choice.JudgedTo)}.{OnTheDay(report)}",
            Answer.OnCourse => $"Write down whatever happens to her before {list.Long(list.List.Choice.JudgedFrom)}; the plan says on which morning anything is done with her.{OnTheDay(report)}",
            Answer.Later when report.IsTooLate => $"{Nothing(report)} Leave her out of this programme, or keep her for a later one.",
            Answer.Later when report.ToAsk is { IsEmpty: false } then => $"{Nothing(report)} {Then(report)}: {Phrases.Small(Ask(then, report))}",
            Answer.Later => $"{Nothing(report)} Keep her for then.",
            Answer.Ask when report.IsOutOfTime => $"No longer in time for {list.Days}: {Phrases.Small(Ask(report))}",
            Answer.Ask => Ask(report),
            _ when animal.ForGood => report.IsForGoodHere ? "Leave her out of this session, and look at the later ones." : "Leave her out.",
            _ => $"Leave her out, unless something changes: {Phrases.Small(SmallestChange.Of(report))}",
        };
    }

    private static string Nothing(AnimalReport report) =>
        (report.Animal.NotBefore ?? report.Animal.ReadyFrom) is { } from ? $"Nothing helps before {report.On.Long(from)}." : "Nothing helps but time.";

    private static string Then(AnimalReport report) => $"If she is wanted {WhenLater.From(report.Animal.NotBefore!.Value, report.On, report.On.Long)}";

    private static string OnTheDay(AnimalReport report)
    {
        var rules = report.Animal.Rules.Where(rule => rule.Rule?.OnTheDay == true && rule.Answer != RuleAnswer.DoesNotApply).Select(rule => rule.Name).ToList();
        return rules.Count == 0 ? "" : $" On the day, look for: {Phrases.And(rules)}.";
    }

    private static string By(Missing missing, AnimalReport report) =>
        !report.IsAskedAfter && report.LastDayFor(missing) is var last && report.On.IsAhead(last) ? $", by {report.On.Long(last)}" : "";

    private static string Ask(AnimalReport report)
    {
        if (report.Jobs is not { Count: > 0 } jobs)
        {
            return Ask(report.Animal.Settle, report);
        }

        var job = jobs.FirstOrDefault(job => job.Ways[0].Any(missing => missing.SettledBy == SettledBy.Yards)) ?? jobs[0];
        var asked = Asked.Of(job.Ways[0]);
        var others = string.Concat(job.Ways.Skip(1).Select(way => $" Or {string.Join(" and ", Asked.Of(way).Select(one => MissingWords.Task(one, report.On)))}."));
        var more = asked.Count + jobs.Sum(other => other == job ? 0 : Asked.Of(other.Ways[0]).Count) - 1;
        return Task(asked[0], report) + others + More(more);
    }

    private static string Ask(ImmutableArray<Missing> settle, AnimalReport report)
    {
        if (settle.IsEmpty)
        {
            return "Find out what is not known in the table below.";
        }

        var asked = Asked.Of(settle);
        var first = asked.FirstOrDefault(one => one.First.SettledBy == SettledBy.Yards) ?? asked[0];
        return Task(first, report) + More(asked.Count - 1);
    }

    private static string Task(Asked asked, AnimalReport report) => $"{Phrases.Sentence(MissingWords.Task(asked, report.On))}, {MissingWords.Where(asked.First)}{By(asked.First, report)}.";

    private static string More(int records) => records > 0 ? $" Then {Numbers.Count(records, "more record", "more records")}, below." : "";
}
