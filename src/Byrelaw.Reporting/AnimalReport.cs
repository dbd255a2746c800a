namespace Byrelaw.Reporting;

/// <summary>One animal on one list.</summary>
/// <param name="On">The list.</param>
/// <param name="Animal">Her judgement.</param>
public sealed record AnimalReport(ListReport On, AnimalJudgement Animal)
{
    /// <summary>The rules that stand between her and Ready, in their order.</summary>
    public IEnumerable<RuleJudgement> InTheWay => Animal.Rules.Where(rule => rule.InTheWay);

    /// <summary>Whether she is surely not in the herd: then no rule need be told.</summary>
    public bool IsGone => Animal.Rules.Any(rule => rule is { Gate: Gate.InTheHerd, Answer: RuleAnswer.NotMet });

    /// <summary>For an Ask that cannot be before a later day: the rules that are not known then.</summary>
    public IEnumerable<RuleJudgement> OpenThen => Animal.NotBefore is not { } day || day > Animal.Timeline.Last ? []
        : Animal.Rules.Where(rule => rule.Rule?.OnTheDay != true && rule.Timeline.At(day).Truth == Truth.Unknown);

    /// <summary>Whether she cannot be ready before the programme's last transfer, whatever is found out.</summary>
    public bool IsTooLate => Animal.TooLate || (Animal.NotBefore is { } day && On.Rulebook.Programme?.FinalTransfer is { } last && day > last);
}
