namespace Byrelaw.Judging.Tests.Reference;

/// <summary>An answer of the table as it was.</summary>
public sealed record OldAnswer(Answer Answer, int? LaterFrom = null, int? NotBefore = null, bool NeverTogether = false);

/// <summary>
/// The table of answers as it was before a list asked only what helps: "Let A(d) be the Kleene 'and' of all the list's rules on day d, after
/// waivers and <c>if not known</c>, and J the judging day (or days: then 'true on J' means on every day of the range, and Later asks for a whole
/// range)." Whoever may be used by the new one may be used by this one, and the other way round.
/// </summary>
public static class OldTable
{
    public static OldAnswer Of(IReadOnlyList<JudgedRule> rules, ByDay<Truth> all, ByDay<Truth> strict, int from, int to)
    {
        var laterStarts = Enumerable.Range(from + 1, Math.Max(0, all.Last - (to - from) - from)).ToList();
        switch (OverRange(all, from))
        {
            case Truth.True:
                // "A true on J: Ready; or On course where it rests on days after the known day: ready if nothing happens until then."
                return new OldAnswer(OverRange(strict, from) == Truth.True ? Answer.Ready : Answer.OnCourse);
            case Truth.Unknown:
                // "A not known on J: Ask."
                return new OldAnswer(Answer.Ask);
        }

        // "A false on J. Some rule false on J and true on no later day of the span: No."
        if (rules.Where(rule => rule.Counts).Any(rule => RuleOver(rule, from) == Truth.False && laterStarts.All(start => RuleOver(rule, start) != Truth.True)))
        {
            return new OldAnswer(Answer.No);
        }

        // "Else A true on a later day: Later, from the first such."
        foreach (var start in laterStarts)
        {
            if (OverRange(all, start) == Truth.True)
            {
                return new OldAnswer(Answer.Later, LaterFrom: start);
            }
        }

        // "Else A not known on a later day: Ask, 'not before' that day."
        foreach (var start in laterStarts)
        {
            if (OverRange(all, start) == Truth.Unknown)
            {
                return new OldAnswer(Answer.Ask, NotBefore: start);
            }
        }

        // "Else No: rules that never hold together, both named."
        return new OldAnswer(Answer.No, NeverTogether: true);

        Truth OverRange(ByDay<Truth> days, int start) => Kleene.All(days.Between(start, start + to - from));
        Truth RuleOver(JudgedRule rule, int start) => Kleene.All(rule.Days.Between(start, start + to - from).Select(day => day.Truth));
    }
}
