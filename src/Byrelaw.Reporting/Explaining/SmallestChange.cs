namespace Byrelaw.Reporting.Explaining;

/// <summary>The smallest change that turns the answer into another, and only one that someone can make or that time makes.</summary>
public static class SmallestChange
{
    /// <summary>One or two sentences.</summary>
    public static string Of(AnimalReport report) => report.Animal.Answer switch
    {
        var answer when answer.MayBeUsed() => Lapses(report),
        Answer.Later => Later(report),
        Answer.Ask => Ask(report),
        _ => No(report),
    };

    private static string Lapses(AnimalReport report)
    {
        var first = report.Animal.Rules
            .Where(rule => rule is { Answer: RuleAnswer.Met, ChangesOn: not null } && rule.Rule?.OnTheDay != true)
            .MinBy(rule => rule.ChangesOn!.Value);
        var lapses = first is null ? "Time alone does not change it within a year."
            : $"Time alone changes it on {report.On.Long(first.ChangesOn!.Value)}, when {first.Name} no longer holds.";
        return report.Animal.Answer == Answer.OnCourse
            ? $"{lapses} Anything recorded against one of these rules before the judging days changes it sooner."
            : lapses;
    }

    private static string Later(AnimalReport report)
    {
        var (list, animal) = (report.On, report.Animal);
        var until = animal.ReadyUntil is { } last ? $" until {list.Long(last)}" : "";
        var lapse = animal.ReadyUntil is { } end ? Ends(report, end) : "";
        var time = animal.ReadyFrom is { } from
            ? $"Time alone: if nothing else happens she is ready from {list.Long(from)}{until}{lapse}."
            : "Time alone is not enough.";
        return time + ThenAsk(report) + HadItBeen(report);
    }

    /// <summary>What is still to be asked on the first later stretch on which no rule fails.</summary>
    private static string ThenAsk(AnimalReport report)
    {
        if (report.Animal.NotBefore is not { } day)
        {
            return "";
        }

        var then = Phrases.Sentence(WhenLater.From(day, report.On, report.On.Long));
        return report.ThenAsk is { IsEmpty: false } ask
            ? $" {then} no rule fails, and this is still to be asked: {MissingWords.AllOf(ask, report.On)}."
            : $" {then} no rule fails, but not all are known: mend what cannot be read.";
    }

    /// <summary>Which rule ends the stretch in which she is ready.</summary>
    private static string Ends(AnimalReport report, NodaTime.LocalDate last)
    {
        var after = last.PlusDays(1);
        var ends = report.Animal.Rules.FirstOrDefault(rule =>
            rule.Rule?.OnTheDay != true && after <= rule.Timeline.Last && rule.Timeline.At(after).Truth != Judging.Truths.Truth.True);
        return ends is null ? "" : $", when {ends.Name} no longer holds";
    }

    private static string HadItBeen(AnimalReport report)
    {
        var remedies = report.InTheWay.SelectMany(rule => RuleWords.Said(rule)).Select(finding => finding.Remedy)
            .Where(remedy => remedy?.HadItBeen is not null).ToList();
        return remedies is [{ } only] && report.InTheWay.Count() == 1
            ? $" Had the last {Phrases.Or(only.Subjects)} been by {report.On.Long(only.HadItBeen!.Value)}, that rule would hold."
            : "";
    }

    private static string Ask(AnimalReport report)
    {
        var told = report.Jobs is { Count: > 0 } jobs ? string.Join("; ", jobs.Select(job => job.Told(report.On))) : MissingWords.AllOf(report.Animal.Settle, report.On);
        return told.Length == 0 ? "Mend what cannot be read." : $"This would settle it: {told}.";
    }

    private static string No(AnimalReport report)
    {
        if (report.Animal.ForGood)
        {
            return report.IsForGoodHere ? "Nothing that can still happen changes it for this session: see the later ones." : "Nothing that can still happen changes it.";
        }

        var needed = report.InTheWay.Where(rule => rule is { Answer: RuleAnswer.NotMet, TurnsOn: null })
            .Select(rule => (rule.Name, Remedy: RuleWords.Remedies(rule, report.On))).Where(one => one.Remedy.Length > 0).ToList();
        return needed.Count == 0 ? "Time alone does not change it within a year."
            : $"It would take {Phrases.And([.. needed.GroupBy(one => one.Remedy, one => one.Name).Select(one => $"{one.Key} ({Phrases.And([.. one])})")])}.";
    }
}
