namespace Byrelaw.Language.Binding.Words;

/// <summary>Finds names that read like an answer followed by its test: <c>no positive BVD virus ever</c>
/// would count one thing or the other.</summary>
internal static class AmbiguousAnswers
{
    /// <summary>Reports each at the later of the two declarations.</summary>
    /// <param name="names">All names.</param>
    /// <param name="files">Each after those it uses.</param>
    public static void Check(Namespace names, IReadOnlyList<RuleFile> files)
    {
        var order = new Dictionary<SourceFile, int>();
        foreach (var file in files)
        {
            order[file.Source] = order.Count;
        }

        var phrases = new Dictionary<string, KindSymbol>(StringComparer.Ordinal);
        foreach (var (phrase, test) in Phrases(names))
        {
            var folded = NameFolding.Fold(phrase);
            var other = names.Find(phrase) ?? (phrases.TryGetValue(folded, out var twin) && twin.Kind != test.Kind ? twin : null);
            phrases.TryAdd(folded, test);
            if (other?.Declared is { } place)
            {
                var here = test.Kind.Declared;
                var at = (order[here.File], here.Start).CompareTo((order[place.File], place.Start)) > 0 ? here : place;
                files[order[at.File]].Problems.Add(NameProblems.AnswerReadsAsName(at, phrase, other.Sort, test.Name));
            }
        }
    }

    private static IEnumerable<(string Phrase, KindSymbol Test)> Phrases(Namespace names) =>
        from name in names.All
        let symbol = name.Symbol as KindSymbol
        where symbol?.Kind is TestKind
        from answer in ((TestKind)symbol.Kind).Answers
        select ($"{answer} {name.Spelling}", symbol);
}
