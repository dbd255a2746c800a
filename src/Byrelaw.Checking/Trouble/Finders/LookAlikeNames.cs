namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>Two names that look alike and are two all the same: one of them was surely meant to be the other.</summary>
internal static class LookAlikeNames
{
    public static IEnumerable<TroubleFound> Find(Rulebook rulebook) =>
        Among(Words(rulebook))
            .Concat(Among(Rules(rulebook)))
            .Concat(Among(rulebook.Rules.Select(rule => new Name(rule.List, rule.Span)).DistinctBy(list => list.Spelling)))
            .Concat(rulebook.Vocabulary.Kinds.OfType<TestKind>().SelectMany(test => Among(test.Answers.Select(answer => new Name(answer, test.Declared, test.Name)))))
            .Concat(rulebook.Vocabulary.Facts.SelectMany(fact => Among(fact.Values.Select(value => new Name(value, fact.Declared, fact.Name)))));

    private static IEnumerable<Name> Words(Rulebook rulebook)
    {
        var vocabulary = rulebook.Vocabulary;
        return vocabulary.Kinds.SelectMany(kind => Spellings(kind.Name, kind.AlsoNames, kind.Declared))
            .Concat(vocabulary.Facts.SelectMany(fact => Spellings(fact.Name, fact.AlsoNames, fact.Declared)))
            .Concat(vocabulary.Spells.Select(spell => new Name(spell.Name, spell.Declared)))
            .Concat(rulebook.Defines.Select(define => new Name(define.Name, define.Span)))
            .Concat(rulebook.Programme?.Dates.Select(date => new Name(date.Name, date.Span)) ?? []);
    }

    private static IEnumerable<Name> Rules(Rulebook rulebook) =>
        rulebook.Rules.Select(rule => new Name(rule.Name, rule.Span)).Concat(rulebook.Prefers.Select(prefer => new Name(prefer.Name, prefer.Span)));

    private static IEnumerable<Name> Spellings(string name, IEnumerable<string> also, SourceSpan at) =>
        also.Prepend(name).Select(spelling => new Name(spelling, at, name));

    private static IEnumerable<TroubleFound> Among(IEnumerable<Name> names)
    {
        var seen = new Dictionary<string, Name>(StringComparer.Ordinal);
        foreach (var name in names.Where(name => name.At.File is not null))
        {
            var looks = LookAlikeLetters.Looks(name.Spelling);
            if (!seen.TryAdd(looks, name) && NameFolding.Fold(seen[looks].Spelling) != NameFolding.Fold(name.Spelling))
            {
                yield return new TroubleFound(TroubleSort.LooksLike, name.Of, seen[looks].Of, TroubleProblems.LooksLike(name.At, name.Spelling, seen[looks].Spelling, seen[looks].At));
            }
        }
    }

    /// <param name="Spelling">As written.</param>
    /// <param name="At">Where.</param>
    /// <param name="Of">The declared name of what it names (or what it is an answer or a value of).</param>
    private sealed record Name(string Spelling, SourceSpan At, string Of)
    {
        public Name(string name, SourceSpan at)
            : this(name, at, name)
        {
        }
    }
}
