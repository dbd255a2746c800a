namespace Byrelaw.Checking.Trouble;

/// <summary>Rules that can be read and are trouble all the same.</summary>
internal static class TroubleProblems
{
    public static Diagnostic NeverTrue(SourceSpan at, IReadOnlyList<Condition> conflict) => Problem.Warning(
        "B1101", at, "no animal can ever meet this", Excluding(conflict));

    public static Diagnostic NobodyOfThose(Rule rule, IReadOnlyList<Condition> conflict) => Problem.Warning(
        "B1101", rule.Needs.Span, "none of the animals that this rule applies to can ever meet it", Excluding(conflict));

    public static Diagnostic NobodyOfTheList(Rule rule, Choice choice, IReadOnlyList<Condition> conflict) => Problem.Warning(
        "B1101", rule.Needs.Span, $"none of the animals that {Quoted.Of(choice.List)} are chosen from can ever meet this", Excluding(conflict));

    public static Diagnostic NeverFalse(SourceSpan at) => Problem.Warning(
        "B1102", at, "no animal can ever fail this", null, "take it out, or mend the limit that asks nothing");

    public static Diagnostic EveryoneOfThose(Rule rule, IReadOnlyList<Condition> conflict) => Problem.Warning(
        "B1102", rule.Needs.Span, "none of the animals that this rule applies to can ever fail it", null, "take it out, or mend the limit that asks nothing");

    public static Diagnostic NeverTogether(Rule rule, Rule other, IReadOnlyList<Condition> conflict) => Problem.Warning(
        "B1103", rule.Needs.Span, $"no animal can meet this and {Quoted.Of(other.Name)} ({Quoted.Place(other.Needs.Span)})", Excluding(conflict),
        "change one of them, or let each apply to other animals");

    public static Diagnostic Implied(Rule rule, Rule by, bool isMutual) => Problem.Warning(
        "B1104", rule.Needs.Span, isMutual
            ? $"this asks the same as {Quoted.Of(by.Name)} ({Quoted.Place(by.Needs.Span)})"
            : $"whoever meets {Quoted.Of(by.Name)} ({Quoted.Place(by.Needs.Span)}) meets this too",
        null, $"take one of them out, or say `accept \"{rule.Name}\" as implied by \"{by.Name}\"` and why");

    public static Diagnostic NeverUsed(Define define) => Problem.Warning(
        "B1105", define.Span, $"nothing uses {Quoted.Of(define.Name)}", null, "take it out, or use it in a rule");

    public static Diagnostic OutOfReach(Condition condition) => Problem.Warning(
        "B1106", condition.Span, "nothing can ever lie in this window", null, "mend the window: no day is in it");

    public static Diagnostic ResultsTooLate(InTheLast window, Kind kind, PlanTask task) => Problem.Warning(
        "B1106", window.Span, $"no result of {Quoted.Of(kind.Name)} is ever in time for this",
        $"results take {task.ResultsTake} ({Quoted.Place(task.Span)})", "look further back than results take");

    public static Diagnostic PassesNotKnown(Rule rule, string of, string may) => Problem.Warning(
        "B1107", rule.Needs.Span, $"animals of which it is not known {of} pass", may,
        $"take out `if not known pass`, or say `accept \"{rule.Name}\" as passing what is not known` and why");

    public static Diagnostic TestsEarly(TestCondition test, SinceLast since) => Problem.Warning(
        "B1108", since.Span, $"a {Quoted.Of(test.Test.Name)} of the very day counts here", "so early it may not tell",
        $"write `from N days after last {string.Join(" or ", since.Kinds.Select(kind => kind.Name))}`, with the days that the test needs");

    public static Diagnostic LooksLike(SourceSpan at, string name, string other, SourceSpan place) => Problem.Warning(
        "B1109", at, $"{Quoted.Of(name)} looks like {Quoted.Of(other)} ({Quoted.Place(place)}) and is another name", "some letters only look the same",
        "type the name again, in one alphabet");

    public static Diagnostic TooLate(TooLateTask late) => Problem.Warning(
        "B1111", late.Task.Due!.Span, $"this is due on {LocalDatePattern.Iso.Format(late.Due)}, and {Quoted.Of(late.Rule.Name)} is not met then", $"on {LocalDatePattern.Iso.Format(late.JudgedOn)} it asks that this is done by {LocalDatePattern.Iso.Format(late.By)}",
        $"let it be due {Period.DaysBetween(late.By, late.Due)} days earlier");

    public static Diagnostic AcceptsNothing(Acceptance acceptance) => Problem.Warning(
        "B1110", acceptance.Span, "there is no such trouble to accept", null, "take this `accept` out");

    /// <summary>The places that exclude each other; null where there are not two.</summary>
    private static string? Excluding(IReadOnlyList<Condition> conflict)
    {
        var places = conflict.Select(Said).Distinct().Take(3).ToList();
        return places.Count < 2 ? null : $"{Phrases.And(places)} exclude each other";
    }

    private static string Said(Condition condition) =>
        $"{Quoted.Of(condition is SortOfAnimal sort ? sort.Words : condition.Span.Text)} (line {condition.Span.Line})";
}
