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
            Answer.OnCourse => $"Leave her be, and write down whatever happens to her before {list.Long(list.List.Choice.JudgedFrom)}.{OnTheDay(report)}",
            Answer.Later when report.IsTooLate => $"{Nothing(report)} Leave her out of this programme, or keep her for a later one.",
            Answer.Later when report.ToAsk is { IsEmpty: false } then => $"{Nothing(report)} {Then(report)}: {Phrases.Small(Ask(then, report))}",
            Answer.Later => $"{Nothing(report)} Keep her for then.",
            Answer.Ask when report.IsOutOfTime => $"No longer in time for {list.Days}: {Phrases.Small(Ask(animal.Settle, report))}",
            Answer.Ask => Ask(report.ToAsk is { IsEmpty: false } open ? open : animal.Settle, report),
            _ when animal.ForGood => "Leave her out.",
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

    private static string Ask(ImmutableArray<Missing> settle, AnimalReport report)
    {
        if (settle.IsEmpty)
        {
            return "Find out what is not known in the table below.";
        }

        var asked = Asked.Of(settle);
        var first = asked.FirstOrDefault(one => one.First.SettledBy == SettledBy.Yards) ?? asked[0];
        var more = asked.Count > 1 ? $" Then {Numbers.Count(asked.Count - 1, "more record", "more records")}, below." : "";
        return $"{Phrases.Sentence(MissingWords.Task(first, report.On))}, {MissingWords.Where(first.First)}{By(first.First, report)}.{more}";
    }
}
