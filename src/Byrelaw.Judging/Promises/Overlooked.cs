using Byrelaw.Language.Floors;
using Byrelaw.Language.Rulebooks.RecordSources;
using Byrelaw.Language.Sources;

namespace Byrelaw.Judging.Promises;

/// <summary>
/// Words of the records that may be a promised kind, by the hints of the rule files, and are left out, declared otherwise or called
/// otherwise. The file that gives a hint may use its words as it means them.
/// </summary>
internal static class Overlooked
{
    /// <summary>One for each such word; the promise of its kind does not count.</summary>
    public static IEnumerable<MayBeOverlooked> Find(Rulebook rulebook, Herd herd)
    {
        var words = herd.Vocabulary;
        var (hints, ofTheFloor) = (Ready(words.Hints), Ready(FloorHints.Of(words)));
        foreach (var overlooked in Words(rulebook, words).Select(word => Of(word)).OfType<MayBeOverlooked>().DistinctBy(one => (NameFolding.Fold(one.Hint.Word), one.Fallen.Id)))
        {
            yield return overlooked;
        }

        foreach (var beside in OverlookedBeside.Find(rulebook, herd).Where(one => IsPromised(one.Fallen)).DistinctBy(one => (NameFolding.Fold(one.Hint.Word), one.Fallen.Id)))
        {
            yield return beside;
        }

        MayBeOverlooked? Of(OverlookedWord word)
        {
            var said = HintedWord.Of(word.Name);
            var hint = Array.Find(hints, one => one.Word.StandsIn(said)
                && one.Hint is var hint && hint.Kind.Id != word.Kind && hint.Declared.File != word.From && !IsOfABull(rulebook, words, hint.Kind, word.Kind) && IsPromised(hint.Kind)).Hint
                ?? Array.Find(ofTheFloor, one => one.Word.StandsIn(said)
                    && one.Hint is var hint && hint.Kind.Id != word.Kind && !IsOfTheFloor(words, word) && !IsHintedThere(words, hint, word.From) && IsPromised(hint.Kind)).Hint
                ?? ItsOwnName(words, word, IsPromised)
                ?? ItsOtherBullet(rulebook, word, IsPromised);
            return hint is not null && !IsSaidNot(rulebook, word, hint.Kind) && !(word.IsNaturalService && IsOfABull(rulebook, words, hint.Kind, word.Kind))
                ? new MayBeOverlooked(hint with { Word = word.Name }, words.Kinds[hint.Kind.Id], word.From is not null ? OverlookedIn.RuleFile : word.Bullet is not null ? OverlookedIn.Bullet : OverlookedIn.Word)
                : null;
        }

        bool IsPromised(Kind kind) => herd.Coverage.Since[kind.Id] < Day.End;
    }

    /// <summary>A text of a source that a person says is not what it is hinted to be: <c>leave out Natural, which is not bull in</c>.</summary>
    private static bool IsSaidNot(Rulebook rulebook, OverlookedWord word, Kind hinted) =>
        word.From is null && rulebook.Records!.LeaveOut.Any(left => left.IsNot?.Id == hinted.Id && NameFolding.Fold(left.Word) == NameFolding.Fold(word.Name));

    /// <summary>What the floor speaks of may be called anything: a farm may write a bull's going as <c>bull away</c>.</summary>
    private static bool IsOfTheFloor(Vocabulary words, OverlookedWord word) =>
        word.From is not null && FloorHints.Knows(words.Kinds[word.Kind]);

    /// <summary>Whether the file that a word stands in gives the very hint itself: it knows what it means.</summary>
    private static bool IsHintedThere(Vocabulary words, Hint hint, SourceFile? from) =>
        from is not null && words.Hints.Any(own => own.Declared.File == from && own.Kind.Id == hint.Kind.Id && NameFolding.Fold(own.Word) == NameFolding.Fold(hint.Word));

    /// <summary>A text of a source that is itself the name of a kind, and is made to mean another.</summary>
    private static Hint? ItsOwnName(Vocabulary words, OverlookedWord word, Predicate<Kind> isPromised) =>
        word.From is null && words.FindKind(word.Name) is { } named && named.Id != word.Kind && isPromised(named) ? new Hint(word.Name, named, named.Declared) : null;

    /// <summary>A text that the farm itself reads as a service or the like, and beside another text, or elsewhere in the same file, as something else, or not at all. In another file it is another sender's.</summary>
    private static Hint? ItsOtherBullet(Rulebook rulebook, OverlookedWord word, Predicate<Kind> isPromised) => word.Bullet is not { } bullet ? null
        : rulebook.Records!.Sources.Where(source => bullet.Where is not null || source.Columns.Any(column => column.Cells.Contains(bullet))).SelectMany(source => source.Columns).SelectMany(column => column.Cells)
            .Where(other => NameFolding.Fold(other.Cell) == NameFolding.Fold(word.Name) && other.Is is IsKind).Select(other => ((IsKind)other.Is).Kind)
            .Where(kind => kind.Id != word.Kind && FloorHints.Knows(kind) && isPromised(kind)).Select(kind => new Hint(word.Name, kind, kind.Declared)).FirstOrDefault();

    /// <summary>
    /// What a farm calls a service, or a bull's going, may well speak of bulls: it is the start of a spell that is hinted, and an
    /// expectation looks at both kinds.
    /// </summary>
    private static bool IsOfABull(Rulebook rulebook, Vocabulary words, Kind hinted, int named) =>
        words.Spells.Any(spell => spell.From.Id == hinted.Id)
        && rulebook.Expectations.Any(expectation => expectation.Else.Any(kind => kind.Id == hinted.Id) && expectation.Else.Any(kind => kind.Id == named));

    /// <summary>Words that are left out, with the kind that a person says they are not; and every name of a kind.</summary>
    private static IEnumerable<OverlookedWord> Words(Rulebook rulebook, Vocabulary words)
    {
        foreach (var left in rulebook.Records?.LeaveOut ?? [])
        {
            yield return new OverlookedWord(left.Word, left.IsNot?.Id ?? -1);
        }

        foreach (var name in words.Names)
        {
            yield return new OverlookedWord(name.Text, name.Kind.Id) { From = name.From.File };
        }

        foreach (var row in rulebook.Records?.Sources.SelectMany(source => source.RowsLeftOut).Where(row => !OverlookedBeside.IsNone(rulebook, row.Cell, null)) ?? [])
        {
            yield return new OverlookedWord(row.Cell, -1);
        }

        // What the built-in layout of the exchange makes of its own words is the program's to know: it stands where the source does.
        foreach (var meaning in rulebook.Records?.Sources.SelectMany(source => source.Columns.Where(column => column.What is LandedTarget { Column: "kind" }).SelectMany(column => column.Cells).Where(cell => !source.IsAde || cell.Span != source.Span)) ?? [])
        {
            if (meaning.Is is IsKind said)
            {
                yield return new OverlookedWord(meaning.Cell, said.Kind.Id) { Bullet = meaning };
            }
            else if (meaning.Is is IsLeftOut && !rulebook.Records!.LeaveOut.Any(left => left.IsNot is not null && NameFolding.Fold(left.Word) == NameFolding.Fold(meaning.Cell)))
            {
                yield return new OverlookedWord(meaning.Cell, -1) { Bullet = meaning };
            }
        }
    }

    /// <summary>A word of the records or the rule files.</summary>
    /// <param name="Name">As it stands there.</param>
    /// <param name="Kind">The id of what it is read as; less than 0 for nothing.</param>
    private sealed record OverlookedWord(string Name, int Kind)
    {
        /// <summary>The rule file that it is a name in; null for none.</summary>
        public SourceFile? From { get; init; }

        /// <summary>The line of a source that says what it means; null for none.</summary>
        public CellMeaning? Bullet { get; init; }

        /// <summary>Whether it is read as a service by a bull: on that day a bull must have been there, or the promise of bulls falls, so it hides none.</summary>
        public bool IsNaturalService => Bullet?.Parts.Any(part => part.What is DetailTarget { Detail: var detail } && NameFolding.Fold(detail) == "method" && part.Value == "natural") == true;
    }

    /// <summary>Each with its word ready to be looked for: there are thousands of pairs.</summary>
    private static (Hint Hint, HintedWord Word)[] Ready(IEnumerable<Hint> hints) => [.. hints.Select(hint => (hint, HintedWord.Of(hint.Word)))];
}
