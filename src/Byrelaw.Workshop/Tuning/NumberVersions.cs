namespace Byrelaw.Workshop.Tuning;

/// <summary>One version of a rule, and what it has in a number's place.</summary>
/// <param name="Rule">The version.</param>
/// <param name="Value">The number; null where this version asks for something of another form.</param>
public sealed record NumberVersion(Rule Rule, double? Value);

/// <summary>Follows a number down through the layers of its rule.</summary>
public static class NumberVersions
{
    /// <summary>Every version of the rule, the one in force first. A number of a define stands in no version of the rule: layers change rules, not defines.</summary>
    public static ImmutableArray<NumberVersion> Of(RuleNumber number)
    {
        ArgumentNullException.ThrowIfNull(number);
        var versions = ImmutableArray.CreateBuilder<NumberVersion>();
        for (var version = number.Define is null ? number.Rule : null; version is not null; version = version.Before)
        {
            versions.Add(new NumberVersion(version, ValueIn(version.Stated, number)));
        }

        return versions.ToImmutable();
    }

    private static double? ValueIn(Condition needs, RuleNumber number)
    {
        var form = FormOf(number.Condition);
        foreach (var condition in needs.Items.Prepend(needs))
        {
            if (FormOf(condition) == form)
            {
                return new ConditionParts(condition).Numbers.FirstOrDefault(other => (other.Part, other.IsHigh) == (number.Number.Part, number.Number.IsHigh))?.Value;
            }
        }

        return null;
    }

    /// <summary>What a condition asks, all its numbers left out.</summary>
    private static string FormOf(Condition condition)
    {
        if (condition is ListCondition list)
        {
            return ConditionText.Head(list with { Count = 0 });
        }

        var blank = new ConditionParts(condition).Numbers.Aggregate(condition, (form, number) => OtherNumber.In(form, number.Part, number.IsHigh, number.Lowest is 0 or null ? 0 : 1));
        return ConditionText.Exact.Of(blank);
    }
}
