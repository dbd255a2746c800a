namespace Byrelaw.Records.Doubts;

/// <summary>An event before the age at which it can happen, as declared; for a calving 15 months where nothing is declared.</summary>
internal static class TooYoung
{
    // Common practice, no source: bred at six months at the earliest, and nine months carried.
    private static readonly TimeLength YoungestCalving = new(15, TimeUnit.Months);

    public static IEnumerable<Doubt> Find(Herd herd)
    {
        foreach (var kind in herd.Vocabulary.Kinds.OfType<EventKind>())
        {
            if ((kind.NotBeforeAge ?? (kind == herd.Vocabulary.Calving ? YoungestCalving : (TimeLength?)null)) is not { } age)
            {
                continue;
            }

            foreach (var (animal, run) in Entries.Animals(herd, kind))
            {
                if (herd.BornEarliest[animal] <= Day.Start)
                {
                    continue;
                }

                var earliest = Day.Number(age.After(Day.Date(herd.BornEarliest[animal])));
                foreach (var i in Entries.Of(run, animal).Where(i => run.Days[i] < earliest))
                {
                    yield return new Doubt(
                        "R0202", run.Lines[i], DoubtfulCell.Date,
                        $"{kind.Name} of {herd.Numbers[animal]} before {age} of age", $"expected {Entries.Iso(earliest)} or later",
                        "check the date, her number, and when she was born");
                }
            }
        }
    }
}
