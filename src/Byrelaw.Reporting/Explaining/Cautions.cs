namespace Byrelaw.Reporting.Explaining;

/// <summary>What to beware of with one animal, for the line she stands on.</summary>
public static class Cautions
{
    /// <summary>Short phrases, the gravest first; none for an animal that is gone.</summary>
    public static IReadOnlyList<string> Of(AnimalReport report)
    {
        if (report.IsGone)
        {
            return [];
        }

        var cautions = new List<string>();
        if (InCalfWords.Of(report.Animal.InCalf) is { Length: > 0 } danger)
        {
            cautions.Add(Phrases.Small(danger));
        }

        foreach (var rule in report.Animal.Rules)
        {
            if (rule.Rule?.IsSafety == true && !rule.AsksTheFloor && rule.Answer is RuleAnswer.NotKnown or RuleAnswer.NotMet or RuleAnswer.Broken)
            {
                cautions.Add(Unsafe(rule));
            }
        }

        foreach (var rule in report.Animal.Rules.Where(rule => rule.Rule?.IsSafety != true))
        {
            if (Withholding(rule) is { } withholding)
            {
                cautions.Add(withholding);
            }
        }

        cautions.AddRange(Pending(report));
        cautions.AddRange(report.Animal.Rules.Where(rule => rule.Waiver is not null)
            .Select(rule => $"waived until {report.On.Short(rule.Waiver!.Until)}: {rule.Name}"));
        cautions.AddRange(report.Animal.AlsoReadyOn.Select(other => $"also on {other}"));
        return [.. cautions.Distinct()];
    }

    /// <summary>Whether a safety rule is not proven: nothing says that she is safe.</summary>
    public static bool NotProven(AnimalJudgement animal) =>
        animal.Rules.Any(rule => rule.Rule?.IsSafety == true && rule.Answer is not (RuleAnswer.Met or RuleAnswer.DoesNotApply));

    /// <summary>Whether she is in calf is told by the floor alone.</summary>
    private static string Unsafe(RuleJudgement rule) =>
        rule.Answer == RuleAnswer.NotMet ? $"fails for safety: {rule.Name}" : $"safety not proven: {rule.Name}";

    private static string? Withholding(RuleJudgement rule)
    {
        var about = rule.Name.Contains("withholding", StringComparison.OrdinalIgnoreCase)
            || (rule.Rule is { } written && ConditionWords.Of(written.Needs).Contains("withholding", StringComparison.OrdinalIgnoreCase));
        return !about ? null : rule.Answer switch
        {
            RuleAnswer.NotMet => "withholding period",
            RuleAnswer.NotKnown or RuleAnswer.Broken => "withholding period not known",
            _ => null,
        };
    }

    private static IEnumerable<string> Pending(AnimalReport report) =>
        report.Animal.Rules.SelectMany(rule => rule.Findings).SelectMany(finding => finding.Missing).Concat(report.Animal.Settle)
            .Where(missing => missing is { Reason: MissingReason.ResultPending, Whose: "" }).Select(missing => $"test pending: {missing.Subject}").Distinct();
}
