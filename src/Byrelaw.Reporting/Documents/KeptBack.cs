namespace Byrelaw.Reporting.Documents;

/// <summary>How many animals each rule keeps back, alone and together with others.</summary>
/// <param name="Caption">What it is about.</param>
/// <param name="Rows">The worst first.</param>
public sealed record KeptBack(string Caption, ImmutableArray<KeepsBack> Rows) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords()
    {
        var table = new Table(Caption, "rule", "keeps back alone", "in all");
        foreach (var rule in Rows)
        {
            table.Add(rule.Rule, $"{rule.Alone}", $"{rule.InAll}");
        }

        return table.IsEmpty ? [] : [table];
    }
}
