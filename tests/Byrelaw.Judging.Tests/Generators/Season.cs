namespace Byrelaw.Judging.Tests.Generators;

/// <summary>The days that a case turns on.</summary>
/// <param name="Known">The day the records reach.</param>
/// <param name="Collection">A date of the programme.</param>
/// <param name="FirstTransfer">8 days later.</param>
/// <param name="FinalTransfer">The same day or the next.</param>
public sealed record Season(LocalDate Known, LocalDate Collection, LocalDate FirstTransfer, LocalDate FinalTransfer)
{
    /// <summary>Known days at month ends and round 29 February, where sums of months clamp.</summary>
    public static readonly Gen<Season> Any =
        from known in Gen.OneOf(
            new LocalDate(2026, 9, 20), new LocalDate(2024, 2, 29), new LocalDate(2024, 3, 31), new LocalDate(2025, 2, 28), new LocalDate(2026, 12, 31))
        from wait in Gen.OneOf(Gen.Int[-40, 60], Gen.Const(0), Gen.Const(22))
        from twoDays in Gen.Bool
        select new Season(known, known.PlusDays(wait), known.PlusDays(wait + 8), known.PlusDays(wait + (twoDays ? 9 : 8)));

    private ImmutableArray<LocalDate> Anchors => [Known, Collection, FirstTransfer, FinalTransfer];

    /// <summary>A day not after the known day, often exactly a rule's duration (or a day more or less) before a judging day.</summary>
    public Gen<LocalDate> Past => Gen.Frequency(
        (3, Border),
        (2, Gen.Int[0, 120].Select(days => Known.PlusDays(-days))),
        (1, Gen.Int[0, 800].Select(days => Known.PlusDays(-days))),
        (1, Gen.OneOf(new LocalDate(2024, 2, 29), new LocalDate(2024, 1, 31), new LocalDate(2023, 12, 31), new LocalDate(2026, 8, 31), new LocalDate(2026, 2, 28))
            .Select(NotAfterKnown)));

    private Gen<LocalDate> Border =>
        from anchor in Gen.OneOf([.. Anchors])
        from length in GenLengths.Any
        from off in Gen.OneOf(0, 0, 1, -1)
        select NotAfterKnown(Before(anchor, length).PlusDays(off));

    /// <summary>A birthday, often exactly so many months before a judging day.</summary>
    public Gen<LocalDate> Birth => Gen.Frequency(
        (2, Gen.Int[300, 1500].Select(days => Known.PlusDays(-days))),
        (2, from anchor in Gen.OneOf([.. Anchors])
            from length in GenLengths.Age
            from off in Gen.OneOf(0, 0, 1, -1)
            select NotAfterKnown(Before(anchor, length).PlusDays(off))),
        (1, Gen.OneOf(new LocalDate(2022, 2, 28), new LocalDate(2020, 2, 29), new LocalDate(2023, 1, 31), new LocalDate(2024, 5, 31)).Select(NotAfterKnown)));

    private LocalDate NotAfterKnown(LocalDate date) => date > Known ? Known : date;

    private static LocalDate Before(LocalDate date, TimeLength length) => length.Unit switch
    {
        TimeUnit.Days => date.PlusDays(-length.Count),
        TimeUnit.Weeks => date.PlusWeeks(-length.Count),
        TimeUnit.Months => date.PlusMonths(-length.Count),
        _ => date.PlusYears(-length.Count),
    };
}
