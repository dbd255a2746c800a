using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Sheets;

/// <summary>Says which kinds of record keep a sheet from being one.</summary>
public static class ShortWords
{
    /// <summary><c>mating and transfer are written down to 1 October 2026 only; a box for a hormone wants all of them to 3 October 2026.</c></summary>
    public static string Of(ImmutableArray<ShortKind> kinds, LocalDate morning) =>
        $"{Phrases.Sentence(Phrases.And([.. kinds.GroupBy(kind => kind.Reach).OrderBy(group => group.Key).Select(group => $"{Phrases.And([.. group.Select(kind => kind.Kind.Name)])} to {Dates.Long(group.Key)}")]))}: so far, and no further, is written down what the safety rules look at. A box for a hormone wants all of it up to {Dates.Long(morning.PlusDays(-1))}.";
}
