namespace Byrelaw.Reporting.Terminal;

/// <summary>What of each rule no worked example shows, a line a rule.</summary>
public static class CoverageText
{
    private const int MostSides = 6;

    /// <summary>The lines, ended with LF.</summary>
    public static string Of(ImmutableArray<RuleCoverage> rules)
    {
        var open = rules.Where(rule => !rule.NotShown.IsEmpty).ToList();
        if (open.Count == 0)
        {
            return $"Examples show every side of {(rules.Length == 1 ? "the one rule" : $"all {rules.Length} rules and preferences")}.\n";
        }

        var text = new DocumentBuilder().Sentence($"Examples show every side of {rules.Length - open.Count} of {Numbers.Count(rules.Length, "rule", "rules and preferences")}. No example shows:").In(1);
        foreach (var rule in open)
        {
            text.Sentence($"{rule.Name} ({rule.Span.File.Path} line {rule.Span.Line}): {Sides(rule)}");
        }

        return text.OnTerminal(Ink.Plain);
    }

    private static string Sides(RuleCoverage rule)
    {
        if (!rule.HasExample)
        {
            return "anything of it";
        }

        var more = rule.NotShown.Length - MostSides;
        return string.Join("; ", rule.NotShown.Take(MostSides)) + (more > 0 ? $"; and {more} more" : "");
    }
}
