namespace Byrelaw.Language.Layers;

/// <summary>Finds what a rule asks of the records themselves in such a way that a row which is lost meets it.</summary>
internal static class LostRecords
{
    /// <summary>The first such fact; null for none.</summary>
    public static Fact? ThatMeet(Rule rule, Rulebook rulebook) =>
        In(rule.Needs, wanted: true, rulebook, []) ?? (rule.AppliesTo is { } named ? In(named, wanted: false, rulebook, []) : null);

    /// <summary>Of a condition that is wanted true, or false.</summary>
    private static Fact? In(Condition condition, bool wanted, Rulebook rulebook, HashSet<(int, bool)> entered) => condition switch
    {
        RecordedCondition recorded => recorded.IsNot == wanted ? recorded.Fact : null,
        NamedCondition { Index: >= 0 } named when named.Index < rulebook.Defines.Length && entered.Add((named.Index, wanted != named.Not)) =>
            In(rulebook.Defines[named.Index].Condition, wanted != named.Not, rulebook, entered),
        ListCondition list => list.Items.Select(item => In(item, list.Kind == ListKind.NoneOf ? !wanted : wanted, rulebook, entered)).FirstOrDefault(found => found is not null),
        _ => null,
    };
}
