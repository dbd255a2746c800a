using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Holds the judge to the reference on one case.</summary>
public static class Difference
{
    /// <summary>The first thing that the two say differently; null where they agree on everything.</summary>
    /// <param name="one">Rules and records.</param>
    /// <param name="isExplained">Whether what is written down of each rule is compared too; else only truths and answers.</param>
    public static string? Of(JudgingCase one, bool isExplained = true)
    {
        var herd = FarmHerd.Of(one);
        herd = ParityDoubts.Laid(herd);
        var draft = new Judge(one.Rulebook, herd, one.KnownOn).JudgeAll(one.On);
        var reference = new ReferenceJudge(one.Rulebook, one.Farm, one.KnownOn, one.On);
        if (DayNumber.Of(herd.KnownDay) != reference.Knowledge.Farm.Known)
        {
            return $"known day: {herd.KnownDay}, reference {DayNumber.Date(reference.Knowledge.Farm.Known)}";
        }

        return one.Rulebook.Programme!.Choices
            .Select((choice, i) => InList(draft.Lists[i], reference.Judge(choice), choice.List, isExplained ? new Explained(one.Rulebook, reference.Knowledge) : null))
            .FirstOrDefault(difference => difference is not null);
    }

    private static string? InList(ListJudgement judged, IReadOnlyList<JudgedAnimal> reference, string list, Explained? explained)
    {
        var isBroken = judged.BrokenParts.Length > 0 || (reference.Count > 0 && reference[0].Rules.Any(rule => rule.IsBroken));
        if (judged.IsBroken != isBroken)
        {
            return $"{list}: broken {judged.IsBroken}, reference {isBroken}";
        }

        var ordered = reference.OrderBy(animal => animal.Number, AnimalNumberOrder.Instance).ToList();
        return Differ($"{list}: animals", string.Join(' ', judged.Animals.Select(animal => animal.Number)), string.Join(' ', ordered.Select(animal => animal.Number)))
            ?? judged.Animals.Zip(ordered).Select(pair => InAnimal(pair.First, pair.Second, list, explained)).FirstOrDefault(difference => difference is not null)
            ?? judged.Animals.Zip(ordered).Select(pair =>
                Differ($"{list}, {pair.First.Number}: rank", pair.First.Rank, RankReference.Of(pair.Second, ordered))).FirstOrDefault(difference => difference is not null);
    }

    private static string? InAnimal(AnimalJudgement judged, JudgedAnimal reference, string list, Explained? explained)
    {
        var place = $"{list}, {judged.Number}";
        var own = judged.Rules.Where(rule => rule.Rule?.IsOfTheFloor != true).ToList();
        var ownReference = reference.Rules.Where(rule => !rule.IsOfTheFloor).ToList();
        return Differ($"{place}: rules", Names(own.Select(rule => (rule.Rule?.Name, rule.Gate))), Names(ownReference.Select(rule => (rule.Rule?.Name, rule.Gate))))
            ?? own.Zip(ownReference).Select(pair => InRule(pair.First, pair.Second, reference, place, explained)).FirstOrDefault(difference => difference is not null)
            ?? InFloor(judged, reference, place)
            ?? Differ($"{place}: in calf", judged.InCalf, reference.InCalf)
            ?? InTimeline($"{place}: all rules together", judged.Timeline, reference.All, reference.AllStrict)
            ?? Differ($"{place}: sort", judged.Sort, reference.Sort)
            ?? Differ($"{place}: answer", judged.Answer, reference.Answer.Answer)
            ?? Differ($"{place}: ready from", judged.ReadyFrom, Date(reference.ReadyFrom))
            ?? Differ($"{place}: ready until", judged.ReadyUntil, Date(reference.ReadyUntil))
            ?? Differ($"{place}: too late", judged.TooLate, reference.TooLate)
            ?? Differ($"{place}: not before", judged.NotBefore, Date(reference.Answer.NotBefore))
            ?? Differ($"{place}: in the way", Names(own.Where(rule => rule.InTheWay).Select(rule => (rule.Rule?.Name, rule.Gate))),
                Names(ownReference.Where(rule => rule.IsInTheWay(reference.Judged.From, reference.Judged.To)).Select(rule => (rule.Rule?.Name, rule.Gate))))
            ?? Differ($"{place}: preferences", string.Join(' ', judged.Prefers.Select(prefer => $"{prefer.Prefer.Name} {prefer.Truth}")),
                string.Join(' ', reference.Prefers.Select(prefer => $"{prefer.Name} {prefer.Truth}")))
            ?? Differ($"{place}: score", judged.Score, reference.Score)
            ?? Together.Differs(judged, reference with { Rules = [.. reference.Rules.Where(rule => !rule.IsOfTheFloor || judged.Rules.Any(shown => shown.Name == rule.Name))] }, place);
    }

    /// <summary>A rule of the floor stands in her table, or a safety rule of the list's own says what it would: where it bars her, one that bars her too.</summary>
    private static string? InFloor(AnimalJudgement judged, JudgedAnimal reference, string place)
    {
        var (from, to) = reference.Judged;
        foreach (var rule in reference.Rules.Where(rule => rule.IsOfTheFloor))
        {
            var shown = judged.Rules.FirstOrDefault(one => one.Rule is { IsOfTheFloor: true } && one.Name == rule.Name);
            if (shown is null && rule.IsInTheWay(from, to) && !judged.Rules.Any(own => own is { InTheWay: true, Rule.IsSafety: true }))
            {
                return $"{place}: {rule.Name} bars her, and nothing in her table says so";
            }

            if (shown is not null && InRule(shown, rule, (from, to), place) is { } difference)
            {
                return difference;
            }
        }

        return judged.Rules.FirstOrDefault(one => one.Rule is { IsOfTheFloor: true } && !reference.Rules.Any(rule => rule.IsOfTheFloor && rule.Name == one.Name)) is { } extra
            ? $"{place}: {extra.Name} stands on a list without a floor" : null;
    }

    private static string? InRule(RuleJudgement judged, JudgedRule reference, JudgedAnimal animal, string place, Explained? explained) =>
        InRule(judged, reference, animal.Judged, place)
            ?? (explained?.Differs(judged, reference, animal) is { } difference ? $"{place}: {reference.Name}, {difference}" : null);

    private static string? InRule(RuleJudgement judged, JudgedRule reference, (int From, int To) days, string place)
    {
        var (from, to) = days;
        return InTimeline($"{place}: {reference.Name}", judged.Timeline,
                ByDay.Over(reference.Days.First, reference.Days.Last, day => reference.Days.On(day).Truth),
                ByDay.Over(reference.Days.First, reference.Days.Last, day => reference.StrictDays.On(day).Truth))
            ?? Differ($"{place}: {reference.Name}", judged.Answer, reference.Answer(from, to))
            ?? Differ($"{place}: {reference.Name}, expected", judged.Expected, reference.IsExpected(from, to));
    }

    private static string? InTimeline(string place, Timeline judged, ByDay<Truth> days, ByDay<Truth> strict)
    {
        if (DayNumber.Of(judged.First) != days.First || DayNumber.Of(judged.Last) != days.Last)
        {
            return $"{place}: span {judged.First} to {judged.Last}, reference {DayNumber.Date(days.First)} to {DayNumber.Date(days.Last)}";
        }

        for (var day = days.First; day <= days.Last; day++)
        {
            var stretch = judged.At(DayNumber.Date(day));
            var expected = days.On(day) != strict.On(day);
            if (stretch.Truth != days.On(day) || stretch.Expected != expected)
            {
                return $"{place} on {DayNumber.Date(day)}: {stretch.Truth}{(stretch.Expected ? " expected" : "")}, reference {days.On(day)}{(expected ? " expected" : "")}";
            }
        }

        return null;
    }

    private static string? Differ<T>(string place, T judged, T reference) =>
        EqualityComparer<T>.Default.Equals(judged, reference) ? null : $"{place}: {judged}, reference {reference}";

    private static string Names(IEnumerable<(string? Rule, Gate Gate)> rules) =>
        string.Join(", ", rules.Select(rule => rule.Rule ?? (rule.Gate == Gate.None ? "lines that could not be read" : rule.Gate.ToString())));

    private static LocalDate? Date(int? day) => day is { } known ? DayNumber.Date(known) : null;
}
