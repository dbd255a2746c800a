namespace Byrelaw.Records.Doubts;

/// <summary>The end of a spell, such as the bull going out, without its start before it, where the farm says that it
/// keeps records of starts. A calving ends spells too, but it comes for its own reasons.</summary>
internal static class EndWithoutStart
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        var coverage = herd.Coverage.Without(gap => gap.IsLostStart);
        foreach (var spell in herd.Vocabulary.Spells.Where(spell => spell.Until != herd.Vocabulary.Calving))
        {
            var starts = herd.Runs[spell.From.Id];
            foreach (var (animal, ends) in Entries.Animals(herd, spell.Until))
            {
                var after = herd.BornEarliest[animal];
                foreach (var i in Entries.Of(ends, animal))
                {
                    var isKept = coverage.Covers(animal, spell.From.Id, after, ends.Days[i], strict: true);
                    if (isKept && !AnyIn(starts.DaysOf(animal), after, ends.Days[i]))
                    {
                        yield return new Doubt(
                            "R0209", ends.Lines[i], DoubtfulCell.Kind,
                            $"{spell.Until.Name} of {herd.Numbers[animal]} without {spell.From.Name} before it",
                            $"expected {spell.From.Name} to be on record too",
                            "write the row that is missing: without it she may have been so on any day before, back to the last end, or to when she joined");
                    }

                    after = ends.Days[i];
                }
            }
        }
    }

    private static bool AnyIn(ReadOnlySpan<int> days, int from, int to)
    {
        foreach (var day in days)
        {
            if (day >= from && day <= to)
            {
                return true;
            }
        }

        return false;
    }
}
