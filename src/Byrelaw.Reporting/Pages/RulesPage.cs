namespace Byrelaw.Reporting.Pages;

/// <summary>Every rule of a programme's lists, once, with what its names stand for, its reason and its source: animals' pages lead here.</summary>
public static class RulesPage
{
    /// <summary>Its path in a report.</summary>
    public const string Path = "rules";

    /// <summary>The page.</summary>
    public static Page Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var lists = draft.Lists.Select(list => list.Choice.List).Distinct().Select(list => (List: list, Rules: draft.Rulebook.Rules.Where(rule => rule.IsFor(list)).ToList())).Where(one => one.Rules.Count > 0).ToList();
        return new Page(Path, "The rules", new PageHead(draft.Rulebook.Programme?.Name ?? "", ReachWords.Fact(draft.Herd)) { Devices = DeviceWords.Of(draft) },
        [
            new DocumentBuilder().Heading(1, "The rules, and where they come from").Sentence("What each asks for, what its names stand for, why it is there, who says so, and what this farm changed.").As("top"),
            .. lists.SelectMany(one => one.Rules.Select((rule, i) => Rule(rule, draft.Rulebook, i == 0 ? one.List : null, one.List))),
            CautionsPart.Of(),
        ]);
    }

    /// <summary>Where a rule of a list stands on the page.</summary>
    public static string AnchorOf(string list, Rule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return $"r{Anchors.Of(list)}-{Anchors.Of(rule.Name)}";
    }

    private static Part Rule(Rule rule, Rulebook rulebook, string? heading, string list)
    {
        var part = new DocumentBuilder();
        if (heading is not null)
        {
            part.Heading(2, Phrases.Sentence(heading));
        }

        return part.Sentence($"{Wording.Bold($"{rule.Name}:")} {ConditionWords.Of(rule.Shown)}.").Sentence(WhyRule.Of(rule, rulebook), Tone.Soft).As("rule", AnchorOf(list, rule));
    }
}
