namespace Byrelaw.Workshop.Correcting;

/// <summary>Finds declared names of which all words but one stand in a statement.</summary>
internal static class IncompleteNames
{
    /// <summary>Each such place with the whole name in it.</summary>
    public static IEnumerable<Proposal> In(TypedStatement statement, int from, int to, Namespace names)
    {
        foreach (var spelling in Spellings(names))
        {
            var words = NameFolding.Fold(spelling).Split(' ');
            for (var missing = 0; missing < words.Length && words.Length > 1; missing++)
            {
                var left = words.Where((_, i) => i != missing).ToArray();
                for (var at = from; at + left.Length - 1 <= to && !left.All(LanguageWords.EndName); at++)
                {
                    if (left.Select((word, i) => statement.Folded(at + i) == word).All(same => same))
                    {
                        yield return new Proposal(statement.Bare(at).To(statement.Bare(at + left.Length - 1)), spelling);
                    }
                }
            }
        }
    }

    private static IEnumerable<string> Spellings(Namespace names) => names.All.SelectMany(name => (IEnumerable<string>)(name.Symbol switch
    {
        KindSymbol { Kind: TestKind test } => [name.Spelling, .. test.Answers],
        FactSymbol { Fact: var fact } => [name.Spelling, .. fact.Values],
        _ => [name.Spelling],
    })).Distinct();
}
