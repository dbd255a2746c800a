using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Sheets;

/// <summary>Says which kinds of record keep a sheet from being one.</summary>
public static class ShortWords
{
    /// <summary><c>mating and transfer are written down to 1 October 2026 only; a box for a hormone wants all of them to 3 October 2026.</c></summary>
    public static string Of(ImmutableArray<ShortKind> kinds, LocalDate morning) =>
        $"{Named(kinds)}: so far, and no further, is written down what the safety rules look at. A box for a hormone wants all of it up to {Dates.Long(morning.PlusDays(-1))}.";

    /// <summary>The same of a day of transfer, on which everything that the recipients' rules look at is to be known.</summary>
    /// <param name="kinds">Which.</param>
    /// <param name="day">The day.</param>
    /// <param name="isSaid">Whether somebody said that all is written down: then the records themselves speak against it.</param>
    public static string OfTransfer(ImmutableArray<ShortKind> kinds, LocalDate day, bool isSaid) =>
        $"{Named(kinds)}: so far, and no further, is written down what the recipients' rules look at. " + (isSaid
            ? "You said that all is written down; but since then nothing of it stands on record, where there were entries in the years before. Write down what happened."
            : $"Bring the records up to date; or, where nothing more happened, say so: --records-to {LocalDatePattern.Iso.Format(day)}.");

    private static string Named(ImmutableArray<ShortKind> kinds) =>
        Phrases.Sentence(Phrases.And([.. kinds.GroupBy(kind => kind.Reach).OrderBy(group => group.Key).Select(group => $"{Phrases.And([.. group.Select(kind => kind.Kind.Name)])} to {Dates.Long(group.Key)}")]));
}
