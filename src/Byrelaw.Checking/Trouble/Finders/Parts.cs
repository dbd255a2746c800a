namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Walks through the parts of conditions.</summary>
internal static class Parts
{
    /// <summary>The single conditions that a condition is made of, those of the defines it names among them.</summary>
    public static IEnumerable<Condition> Of(Condition condition, Rulebook rulebook) => condition switch
    {
        NamedCondition { Index: < 0 } => [],
        NamedCondition named => Of(rulebook.Defines[named.Index].Condition, rulebook),
        ListCondition list => list.Items.SelectMany(item => Of(item, rulebook)),
        _ => [condition],
    };

    /// <summary>The same without following defines.</summary>
    public static IEnumerable<Condition> WrittenIn(Condition condition) => condition is ListCondition list ? list.Items : [condition];
}
