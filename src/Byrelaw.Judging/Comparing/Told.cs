namespace Byrelaw.Judging.Comparing;

/// <summary>What of a judgement counts where two are compared: the answer, its dates, the rules in the way and the points.
/// What would settle an Ask, and her place among the others, do not.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="ReadyFrom">See <see cref="AnimalJudgement.ReadyFrom"/>.</param>
/// <param name="ReadyUntil">See <see cref="AnimalJudgement.ReadyUntil"/>.</param>
/// <param name="TooLate">Past the final transfer.</param>
/// <param name="NotBefore">See <see cref="AnimalJudgement.NotBefore"/>.</param>
/// <param name="ForGood">Nothing changes it.</param>
/// <param name="NeverTogether">Two rules never hold together.</param>
/// <param name="InTheWay">The rules in the way, each with its answer, by name.</param>
/// <param name="Points">Of the preferences.</param>
public sealed record Told(
    Answer Answer, LocalDate? ReadyFrom, LocalDate? ReadyUntil, bool TooLate, LocalDate? NotBefore, bool ForGood, bool NeverTogether,
    string InTheWay, double Points)
{
    /// <summary>Takes what counts from a judgement.</summary>
    /// <param name="judgement">The judgement.</param>
    /// <param name="nameNow">What a rule goes by; the same for one that was renamed.</param>
    public static Told Of(AnimalJudgement judgement, Func<string, string> nameNow)
    {
        ArgumentNullException.ThrowIfNull(judgement);
        var inTheWay = judgement.Rules.Where(rule => rule.InTheWay)
            .Select(rule => $"{(rule.Rule is { } own ? nameNow(own.Name) : rule.Gate == Gate.None ? "" : rule.Name)}: {rule.Answer}");
        return new Told(
            judgement.Answer, judgement.ReadyFrom, judgement.ReadyUntil, judgement.TooLate, judgement.NotBefore, judgement.ForGood,
            !judgement.NeverTogether.IsEmpty, string.Join('\n', inTheWay.Order(StringComparer.Ordinal)), judgement.Score);
    }
}
