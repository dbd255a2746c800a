namespace Byrelaw.Judging.Comparing;

/// <summary>An animal of which the two rulebooks say something different.</summary>
/// <param name="List">The list.</param>
/// <param name="Number">Her number.</param>
/// <param name="Old">By the old rulebook; null where its list does not take her.</param>
/// <param name="New">By the new one; the same.</param>
public sealed record AnimalDifference(string List, string Number, AnimalJudgement? Old, AnimalJudgement? New);

/// <summary>A change that animals may feel: one difference, or all the words together, since records are read with all of them.</summary>
/// <param name="Parts">At least one.</param>
public sealed record Change(ImmutableArray<Difference> Parts)
{
    /// <summary>The changes between two rulebooks that can be felt.</summary>
    public static ImmutableArray<Change> Of(RulebookComparison between)
    {
        ArgumentNullException.ThrowIfNull(between);
        var felt = between.Differences.Where(difference => difference.MayChangeAnswers).ToList();
        ImmutableArray<Difference> words = [.. felt.Where(difference => difference is WordDifference)];
        return
        [
            .. words.IsEmpty ? Array.Empty<Change>() : [new Change(words)],
            .. felt.Where(difference => difference is not WordDifference).Select(difference => new Change([difference])),
        ];
    }
}

/// <summary>
/// Why an answer differs: the fewest changes that take it from the old to the new. Take one of them away, and the rest
/// no longer do.
/// </summary>
/// <param name="Changes">Those changes, in the order of the comparison.</param>
/// <param name="Alone">Which of them change something of her by themselves.</param>
/// <param name="Instead">Other changes that do the same without the first dispensable one of these; empty where each of them is needed.</param>
public sealed record Cause(ImmutableArray<Change> Changes, ImmutableArray<bool> Alone, ImmutableArray<Change> Instead);

/// <summary>All animals with one cause.</summary>
public sealed record CauseGroup(Cause Cause, ImmutableArray<AnimalDifference> Animals);

/// <summary>One herd judged by two rulebooks.</summary>
/// <param name="Old">By the old one.</param>
/// <param name="New">By the new one.</param>
/// <param name="Groups">Every animal of which something differs, once a list, by cause; groups in the order of the changes.</param>
public sealed record HerdComparison(Draft Old, Draft New, ImmutableArray<CauseGroup> Groups);
