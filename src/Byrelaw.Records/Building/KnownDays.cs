namespace Byrelaw.Records.Building;

/// <summary>The day the records reach.</summary>
/// <param name="KnownDay">As seen on the day that is asked about.</param>
/// <param name="Today">As seen today: facts and births are today's whatever day is asked about.</param>
/// <param name="IsFarAhead">Whether rows lie so far after all others that they are not taken for how far the records reach.</param>
/// <param name="IsReached">False where nobody says a day and no record has one: the days above stand for nothing then.</param>
internal readonly record struct KnownDays(int KnownDay, int Today, bool IsFarAhead, bool IsReached)
{
    /// <summary>What is said or asked, the earlier where both are; else the latest entry; else, without any, the latest birth.</summary>
    public static KnownDays Of(RecordKeeping? keeping, LocalDate? knownOn, LatestDays entries, AnimalRow[] animals)
    {
        var upTo = keeping?.UpTo is { } said ? Day.Number(said) : (int?)null;
        var asked = knownOn is { } on ? Day.Number(on) : (int?)null;
        var now = keeping?.Today is { } today ? Day.Number(today) : Day.End;
        var latest = entries.Latest > Day.Start ? entries.LatestNearOthers : LatestBirth(animals);
        latest = Math.Min(latest, now);
        var knownDay = Math.Min(now, upTo is { } u && asked is { } a ? Math.Min(u, a) : upTo ?? asked ?? latest);
        return new KnownDays(knownDay, Math.Min(now, Math.Max(upTo ?? latest, knownDay)), upTo is null && asked is null && latest < entries.Latest && latest < now, upTo is not null || asked is not null || latest > 0);
    }

    private static int LatestBirth(AnimalRow[] animals)
    {
        var latest = 0;
        foreach (var animal in animals)
        {
            latest = Math.Max(latest, animal.BornFirst);
        }

        return latest;
    }
}
