namespace Byrelaw.Judging.Tests.Reference;

/// <summary>An answer with its dates.</summary>
/// <param name="Answer">Ready, On course, Later, Ask or No.</param>
/// <param name="Row">Which row of the table it is, from 1.</param>
/// <param name="LaterFrom">For Later: t, "the first later stretch with A true".</param>
/// <param name="NotBefore">For Later: u, "the first on which no rule is false", where it is before t.</param>
public sealed record AnswerWithDates(Answer Answer, int Row, int? LaterFrom = null, int? NotBefore = null);

/// <summary>
/// "J is the judging days, A(J) the Kleene 'and' of all rules over all of them. A *stretch*: from a later day of J to its end, or as many days in
/// a row as J has, after it. *Stuck*: some rule is false on J and true on no later stretch of the span. t: the first later stretch with A true.
/// u: the first on which no rule is false, so never after t."
/// </summary>
public static class AnswerReference
{
    public static AnswerWithDates Of(IReadOnlyList<JudgedRule> rules, ByDay<Truth> all, ByDay<Truth> strict, int from, int to)
    {
        var judged = all.Between(from, to).ToList();
        var isExpected = Kleene.All(judged) != Kleene.All(strict.Between(from, to));
        var later = Stretches.Later(from, to, all.Last).ToList();
        var counted = rules.Where(rule => rule.Counts).ToList();
        var isStuck = counted.Exists(rule => Over(rule, (from, to)) == Truth.False && !later.Exists(stretch => Over(rule, stretch) == Truth.True));
        var t = later.Where(stretch => Kleene.All(all.Between(stretch.From, stretch.To)) == Truth.True).Select(stretch => (int?)stretch.From).FirstOrDefault();
        var u = later.Where(stretch => counted.TrueForAll(rule => Over(rule, stretch) != Truth.False)).Select(stretch => (int?)stretch.From).FirstOrDefault();
        return Kleene.All(judged) switch
        {
            Truth.True when !isExpected => new(Answer.Ready, 1),
            Truth.True => new(Answer.OnCourse, 2),
            Truth.Unknown => new(Answer.Ask, 3),
            _ when isStuck => new(Answer.No, 4),
            _ when t is not null && u == t => new(Answer.Later, 5, t),
            _ when t is not null && u < t => new(Answer.Later, 6, t, u),
            _ when u is not null => new(Answer.Later, 7, null, u),
            _ => new(Answer.No, 8),
        };
    }

    private static Truth Over(JudgedRule rule, (int From, int To) stretch) =>
        Kleene.All(rule.Days.Between(stretch.From, stretch.To).Select(day => day.Truth));
}

/// <summary>The stretches that are later than the judging days, in order.</summary>
public static class Stretches
{
    public static IEnumerable<(int From, int To)> Later(int from, int to, int last) =>
        Enumerable.Range(from + 1, to - from).Select(day => (day, to))
            .Concat(Enumerable.Range(to + 1, Math.Max(0, last - to)).Select(day => (day, day + to - from)).Where(stretch => stretch.Item2 <= last));
}
