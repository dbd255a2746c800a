using Byrelaw.Language.Sources;

namespace Byrelaw.Reporting.Pages;

/// <summary>Words that a farm's own file declares, and what it says of those of other files.</summary>
internal static class OwnWords
{
    /// <summary>An item each.</summary>
    public static IEnumerable<Wording> Of(Rulebook rulebook)
    {
        var own = rulebook.Files.FirstOrDefault();
        var words = rulebook.Vocabulary;
        foreach (var kind in words.Kinds.Where(kind => IsIn(own, kind.Declared)))
        {
            yield return Said(kind switch { MeasureKind => "Own measure", TestKind => "Own test", _ => "Own event" }, kind.Name, kind.Declared);
        }

        foreach (var fact in words.Facts.Where(fact => IsIn(own, fact.Declared)))
        {
            yield return Said("Own fact", fact.Name, fact.Declared);
        }

        foreach (var spell in words.Spells.Where(spell => IsIn(own, spell.Declared)))
        {
            yield return Said("Own spell", spell.Name, spell.Declared);
        }

        foreach (var kind in words.Kinds.Where(kind => !IsIn(own, kind.Declared)))
        {
            foreach (var detail in kind.Details.Where(detail => IsIn(own, detail.Declared)))
            {
                yield return Said("Own detail", $"{detail.Name} of {kind.Name}", detail.Declared);
            }
        }

        foreach (var fact in words.Facts.Where(fact => !IsIn(own, fact.Declared)))
        {
            foreach (var added in fact.Added.Where(added => IsIn(own, added.At)))
            {
                yield return Said("Value added", $"{added.Value} to {fact.Name}", added.At);
            }
        }

        foreach (var called in words.Names.Where(name => IsIn(own, name.From) && !IsIn(own, name.Kind.Declared)).GroupBy(name => name.Kind))
        {
            yield return Said("Called otherwise", called.Key.Name, called.First().From);
        }

        foreach (var (name, builtIn, from) in words.Called.Where(called => IsIn(own, called.From)))
        {
            yield return Said("Called otherwise", $"{builtIn}, {name}", from);
        }

        foreach (var hint in words.Hints.Where(hint => IsIn(own, hint.Declared)))
        {
            yield return Said("Own hint", $"{hint.Word} may be {hint.Kind.Name}", hint.Declared);
        }

        foreach (var define in rulebook.Defines.Where(define => IsIn(own, define.Span)))
        {
            yield return LocalPractice.Said("Own name", define.Name, $"stands for: {ConditionWords.Of(define.Condition)} ({ChangeHistory.Place(define.Span)})", null, null);
        }
    }

    private static Wording Said(string how, string name, SourceSpan at) => LocalPractice.Said(how, name, AsWritten.LineOf(at), null, null);

    private static bool IsIn(SourceFile? file, SourceSpan span) => file is not null && ReferenceEquals(span.File, file);
}
