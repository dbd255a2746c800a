namespace Byrelaw.Records.Embryos;

/// <summary>Finds what has become of an embryo. Whatever can be read in two ways leaves it in doubt: one in doubt is offered to nobody.</summary>
internal static class EmbryoFate
{
    private const string Freezing = "embryo frozen";

    /// <summary>Whether a row says that it was frozen; every other one of an embryo ends it, but for a straw that was thawed and put into nobody.</summary>
    public static bool IsFreezing(EmbryoRow row) => !row.IsNotDone && NameFolding.Fold(row.Kind.Name) == Freezing;

    /// <summary>What has become of one.</summary>
    /// <param name="embryo">As its row says.</param>
    /// <param name="rows">What is on record of it.</param>
    /// <param name="mayBe">What may be a transfer of it.</param>
    public static EmbryoStanding Of(Embryo embryo, ImmutableArray<EmbryoRow> rows, ImmutableArray<MayBeATransfer> mayBe)
    {
        ImmutableArray<EmbryoRow> ends = [.. rows.Where(row => !IsFreezing(row) && !row.IsNotDone)];
        if (!embryo.IsReadable)
        {
            return new EmbryoStanding(EmbryoStatus.InDoubt, Why: EmbryoDoubt.RowUnreadable);
        }

        if (rows.FirstOrDefault(row => row.Date is null) is { } undated)
        {
            return new EmbryoStanding(EmbryoStatus.InDoubt, undated, EmbryoDoubt.NoDay);
        }

        if (ends.Length > 1 && ends.Any(row => row.IsTransfer))
        {
            return new EmbryoStanding(EmbryoStatus.InDoubt, ends[^1], EmbryoDoubt.UsedTwice);
        }

        if (!ends.IsEmpty)
        {
            return new EmbryoStanding(ends[0].IsTransfer ? EmbryoStatus.Used : EmbryoStatus.Discarded, ends[0]);
        }

        if (rows.FirstOrDefault(row => row.IsNotDone) is { } thawed)
        {
            return new EmbryoStanding(EmbryoStatus.InDoubt, thawed, EmbryoDoubt.Thawed);
        }

        if (mayBe.FirstOrDefault(one => one.MayBeOf(embryo)) is { } may)
        {
            return new EmbryoStanding(EmbryoStatus.InDoubt, may.Row, may.Sheet is null ? EmbryoDoubt.MayBeUsed : EmbryoDoubt.OnAnOpenSheet) { Sheet = may.Sheet };
        }

        return rows.FirstOrDefault() is { } frozen ? new EmbryoStanding(EmbryoStatus.InTheTank, frozen)
            : new EmbryoStanding(embryo.WasFrozen ? EmbryoStatus.InTheTank : EmbryoStatus.Fresh);
    }
}
