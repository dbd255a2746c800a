namespace Byrelaw.Judging.Promises;

/// <summary>
/// What an expectation about the fathers of calves says of more than calvings: a calf that a test found, or that was slipped, has a father too, a
/// flushing follows a service, and where a bull served, a bull ran. Each is tried as the expectation itself is, under its name, so that one waiver is for all.
/// </summary>
internal static class FathersExpected
{
    // From the first day on which a test can show a calf to the longest that a cow carries one: common practice, no source.
    private static readonly TimeLength Nearest = new(20, TimeUnit.Days);
    private static readonly TimeLength Farthest = new(300, TimeUnit.Days);

    // An embryo is flushed out on the seventh day or so after the service: common practice, no source.
    private static readonly TimeLength BeforeAFlush = new(20, TimeUnit.Days);
    private static readonly TimeLength SameDay = new(0, TimeUnit.Days);

    /// <summary>All that follow from the expectations of a rulebook; none where it has none about calvings.</summary>
    /// <param name="rulebook">With its expectations, and its words.</param>
    /// <param name="herd">What is on record.</param>
    public static IEnumerable<(EntryExpectation Expectation, Predicate<int> IsMeant)> Of(Rulebook rulebook, Herd herd)
    {
        var words = herd.Vocabulary;
        foreach (var calves in rulebook.Expectations.OfType<EntryExpectation>().Where(one => one is { IsBroken: false, IsAdded: false, IsBefore: false, ForHer: false } && one.Every.Kind == words.Calving))
        {
            if (words.FindKind("pregnancy test") is TestKind test && test.Answers.IndexOf("pregnant") is >= 0 and var pregnant)
            {
                yield return (calves with { Every = new Counted(test, pregnant), From = Nearest, To = Farthest, IsOfOnePregnancy = true }, Any);
            }

            if (words.FindKind("abortion") is EventKind abortion)
            {
                yield return (calves with { Every = new Counted(abortion), From = Nearest, To = Farthest, IsOfOnePregnancy = true }, Any);
            }

            if (words.FindKind("flushing") is EventKind flushing)
            {
                yield return (calves with { Every = new Counted(flushing), From = SameDay, To = BeforeAFlush }, Any);
            }

            if (words.FindKind("mating") is EventKind mating && MethodOf(mating) is >= 0 and var method)
            {
                yield return (
                    calves with { Every = new Counted(mating with { Name = "natural mating" }), From = SameDay, To = SameDay, Others = [], Else = [.. calves.Else.Where(kind => calves.Spells.Any(spell => kind == spell.From || kind == spell.Until))] },
                    line => herd.Details.Of(line, method) is { State: FactState.Unreadable } or { Text: "natural" });
            }
        }
    }

    private static bool Any(int line) => true;

    private static int MethodOf(EventKind mating)
    {
        for (var place = 0; place < mating.Details.Length; place++)
        {
            if (NameFolding.Fold(mating.Details[place].Name) == "method")
            {
                return place;
            }
        }

        return -1;
    }
}
