using Byrelaw.Records.Embryos;

namespace Byrelaw.Reporting.Words;

/// <summary>What is said of a farm's embryos.</summary>
internal static class EmbryoWords
{
    /// <summary>How many there are of each: <c>2 fresh, 5 in the tank, 3 used</c>.</summary>
    public static string Counts(EmbryoBook book) => Phrases.And([.. book.Embryos.GroupBy(embryo => book.StandingOf(embryo).State).OrderBy(group => group.Key).Select(group => $"{group.Count()} {Of(group.Key)}")]);

    /// <summary>A state.</summary>
    public static string Of(EmbryoStatus state) => state switch
    {
        EmbryoStatus.Fresh => "fresh",
        EmbryoStatus.InTheTank => "in the tank",
        EmbryoStatus.Used => "used",
        EmbryoStatus.Discarded => "discarded",
        _ => "in doubt",
    };

    /// <summary>Why one is in doubt, and what settles it; null where it is not in doubt.</summary>
    public static string? Doubt(Embryo embryo, Herd herd)
    {
        var standing = herd.Embryos.StandingOf(embryo);
        var place = standing.By is { } row ? $" ({herd.EventPlace(row.Line).File} line {herd.EventPlace(row.Line).Line})" : "";
        return standing.Why switch
        {
            EmbryoDoubt.RowUnreadable => $"its row in {EmbryoBook.EmbryosFile}, line {embryo.Line}, cannot be believed as it stands: mend it",
            EmbryoDoubt.UsedTwice => $"it was used more than once on record, or used and discarded{place}: correct the label of one row",
            EmbryoDoubt.MayBeUsed when standing.By is null => "a row that cannot be read may be a transfer of it: mend that row",
            EmbryoDoubt.MayBeUsed when standing.By.Label is null => $"a row for “{standing.By.Kind.Name}” does not say of which embryo, and may be of it{place}: write its label there",
            EmbryoDoubt.MayBeUsed => $"a row for “{standing.By.Kind.Name}” names an embryo that nobody listed, and may be of it{place}: correct that label",
            EmbryoDoubt.Thawed => $"its straw was thawed and it went into nobody{place}: write that it was discarded, or into whom it went",
            EmbryoDoubt.NoDay => $"a row of it has no day that can be read{place}: write the day",
            EmbryoDoubt.OnAnOpenSheet => $"it may stand on row {standing.Sheet!.Row.Row} of sheet {standing.Sheet.Sheet.Number}, which is not on record yet",
            _ => null,
        };
    }

    /// <summary>All of it, a sentence each; none on a farm that lists no embryos.</summary>
    public static IEnumerable<string> All(Herd herd)
    {
        var book = herd.Embryos;
        if (book.Embryos.IsEmpty)
        {
            yield break;
        }

        yield return $"{Numbers.Count(book.Embryos.Length, "embryo", "embryos")} in {EmbryoBook.EmbryosFile}: {Counts(book)}.";
        foreach (var doubts in book.Embryos.Where(embryo => book.StandingOf(embryo).Why is not null).GroupBy(embryo => Doubt(embryo, herd)!))
        {
            yield return $"{Phrases.And([.. doubts.Select(embryo => embryo.Label)])} {(doubts.Count() == 1 ? "is" : "are")} in doubt, and offered to nobody: {doubts.Key}.";
        }

        if (book.TransfersWithoutEmbryo > 0)
        {
            yield return $"{Numbers.Count(book.TransfersWithoutEmbryo, "transfer on record names", "transfers on record name")} no embryo.";
        }
    }
}
