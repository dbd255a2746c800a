using Byrelaw.Language.Rulebooks;
using Byrelaw.Reporting.Markdown;
using Byrelaw.Reporting.Words;

namespace Byrelaw.Reporting.Pages;

/// <summary>What this farm does differently from the rules it starts from: changed, its own, dropped, waived.</summary>
public static class LocalPractice
{
    /// <summary>The part of the list's page.</summary>
    public static Part Of(ListReport list)
    {
        var rules = list.Rulebook.Rules.Where(rule => rule.List == list.Name).ToList();
        var prefers = list.Rulebook.Prefers.Where(prefer => prefer.List == list.Name).ToList();
        string[] items =
        [
            .. rules.Where(rule => rule.Before is not null).Select(Changed),
            .. prefers.Where(prefer => prefer.Before is not null).Select(Changed),
            .. rules.Where(rule => rule.Basis == Basis.Local && rule.Before is null).Select(rule => Said("Own rule", rule.Name, ConditionText.Of(rule.Needs), rule.Because, rule.Agreement)),
            .. list.Rulebook.Drops.Where(drop => drop.Rule.List == list.Name)
                .Select(drop => Said("Dropped", drop.Rule.Name, $"asked for {ConditionText.Of(drop.Rule.Needs)}", drop.Because, drop.Agreement)),
            .. list.Rulebook.Waivers.Where(waiver => rules.Any(rule => rule.Name == waiver.Rule))
                .Select(waiver => Said("Waived", $"{waiver.Rule} for {waiver.Animal}", $"until {Dates.Long(waiver.Until)}", waiver.Because, waiver.Agreement)),
        ];
        var part = new MarkdownPart().Heading(2, "What this farm does differently");
        return (items.Length == 0 ? part.Words("Nothing: the rules stand as they are in the files used.") : part.BulletsOf(items)).As("local");
    }

    /// <summary>Who agreed and when: <c>Agreed by herd vet on 14 June 2026.</c></summary>
    public static string Agreed(Agreement? agreement) =>
        agreement is null ? "" : $"Agreed by {Phrases.And(agreement.By)} on {Dates.Long(agreement.On)}.";

    /// <summary>What a version of a rule says, where it differs from another one.</summary>
    public static string Was(Rule now, Rule before)
    {
        var parts = new List<string>();
        var (is_, was) = (ConditionText.Of(now.Needs), ConditionText.Of(before.Needs));
        if (is_ != was)
        {
            parts.Add($"“{is_}” was “{was}”");
        }

        if (RuleWords.Audience(now) is var for_ && for_ != RuleWords.Audience(before))
        {
            parts.Add($"{Everyone(for_)} was {Everyone(RuleWords.Audience(before))}");
        }

        if (now.IfNotKnown != before.IfNotKnown)
        {
            parts.Add($"if not known {Word(now.IfNotKnown)} was {Word(before.IfNotKnown)}");
        }

        return parts.Count == 0 ? "the same demand, with another reason" : string.Join("; ", parts);
    }

    private static string Changed(Rule rule) => Said("Changed", rule.Name, Was(rule, rule.Before!), rule.Because, rule.Agreement);

    private static string Changed(Prefer prefer)
    {
        var (now, before) = (ConditionText.Of(prefer.Condition), ConditionText.Of(prefer.Before!.Condition));
        var what = now == before ? $"{Numbers.Of(prefer.Counts)} points were {Numbers.Of(prefer.Before.Counts)}" : $"“{now}” was “{before}”";
        return Said("Changed", prefer.Name, what, prefer.Because, prefer.Agreement);
    }

    private static string Said(string how, string name, string what, string? because, Agreement? agreement)
    {
        var rest = string.Join(' ', new[] { $"{what}.", because, Agreed(agreement) }.Where(text => !string.IsNullOrEmpty(text)));
        return $"{MarkdownText.Bold($"{how}: {name}.")} {MarkdownText.Of(Phrases.Sentence(rest))}";
    }

    private static string Everyone(string audience) => audience.Length == 0 ? "for all" : audience;

    private static string Word(IfNotKnown answer) => answer switch { IfNotKnown.Pass => "pass", IfNotKnown.Exclude => "exclude", _ => "ask" };
}
