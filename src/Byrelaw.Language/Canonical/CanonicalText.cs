namespace Byrelaw.Language.Canonical;

/// <summary>Prints rulebooks the one way; what it prints reads back to the same rulebook.</summary>
public static class CanonicalText
{
    /// <summary>The whole rulebook: blocks sorted by kind and name, with reasons, sources, agreements and
    /// layers; without comments and paths.</summary>
    public static string Of(Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var words = string.Join('\n', VocabularyText.Of(rulebook.Vocabulary));
        IEnumerable<string?> blocks =
        [
            words.Length == 0 ? null : words,
            Lines(rulebook.Vocabulary.Hints.Select(hint => $"hint {NameText.Exact(hint.Word)} may be {NameText.Exact(hint.Kind.Name)}")),
            .. ByName(rulebook.Expectations, expectation => expectation.Name).Select(ExpectationText.Of),
            .. ByName(rulebook.ExpectationWaivers, waiver => waiver.Expectation).ThenBy(waiver => waiver.Animal, StringComparer.Ordinal).Select(ExpectationText.Of),
            .. ByName(rulebook.Defines.Where(define => !define.IsOfTheFloor), define => define.Name).Select(define =>
                RuleText.Block($"define {NameText.Exact(define.Name)}", [RuleText.Condition("", define.Condition)])),
            .. Lists(rulebook).SelectMany(list => Of(rulebook, list)),
            .. ByName(rulebook.Drops, drop => drop.Rule.Name).Select(drop =>
                RuleText.Block($"drop {NameText.Text(drop.Rule.Name)}", RuleText.Reasons(drop.Because, null, drop.Agreement))),
            .. ByName(rulebook.Waivers, waiver => waiver.Rule).ThenBy(waiver => waiver.Animal, StringComparer.Ordinal).ThenBy(waiver => waiver.Until).Select(Of),
            .. PlanText.Of(rulebook.Plans),
            Floor(rulebook),
            rulebook.Records is { } records ? FarmText.Of(records) : null,
            rulebook.Programme is { } programme ? FarmText.Of(programme) : null,
        ];
        var text = string.Join("\n\n", blocks.OfType<string>());
        return text.Length == 0 ? text : text + "\n";
    }

    /// <summary>One condition on one line (a list: <c>any of: A; B</c>), for pages that quote a rule.</summary>
    public static string Of(Condition condition)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return ConditionText.Spoken.Of(condition);
    }

    private static IEnumerable<string> Of(Rulebook rulebook, string list)
    {
        var rules = rulebook.Rules.Concat(rulebook.Drops.Select(drop => drop.Rule)).Where(rule => rule.List == list);
        return ByName(rules, rule => rule.Name).SelectMany(RuleText.Of)
            .Concat(ByName(rulebook.Prefers.Where(prefer => prefer.List == list), prefer => prefer.Name).SelectMany(RuleText.Of))
            .Prepend($"rules for {list}");
    }

    /// <summary>The floor under the lists that have one. No file can say it, so it stands there as a comment does.</summary>
    private static string? Floor(Rulebook rulebook)
    {
        if (rulebook.Floor.IsEmpty || rulebook.Programme?.Choices.Any(choice => choice.HasFloor) != true)
        {
            return null;
        }

        var blocks = ByName(rulebook.Defines.Where(define => define.IsOfTheFloor), define => define.Name)
            .Select(define => RuleText.Block($"define {NameText.Exact(define.Name)}", [RuleText.Condition("", define.Condition)]))
            .Concat(rulebook.Floor.SelectMany(RuleText.Of));
        return string.Join('\n', blocks.SelectMany(block => block.Split('\n')).Select(line => $"# {line}"));
    }

    private static string? Lines(IEnumerable<string> lines)
    {
        var text = string.Join('\n', lines.Order(StringComparer.Ordinal));
        return text.Length == 0 ? null : text;
    }

    private static IEnumerable<string> Lists(Rulebook rulebook) => NameText.Sorted(
        rulebook.Rules.Select(rule => rule.List)
            .Concat(rulebook.Drops.Select(drop => drop.Rule.List))
            .Concat(rulebook.Prefers.Select(prefer => prefer.List))
            .Distinct());

    private static string Of(Waiver waiver) => RuleText.Block(
        $"waive {NameText.Text(waiver.Rule)} for {NameText.Text(waiver.Animal)}",
        [$"until {NumberText.Of(waiver.Until)}", .. RuleText.Reasons(waiver.Because, null, waiver.Agreement)]);

    private static IOrderedEnumerable<T> ByName<T>(IEnumerable<T> items, Func<T, string> name) =>
        items.OrderBy(item => NameFolding.Fold(name(item)), StringComparer.Ordinal);
}
