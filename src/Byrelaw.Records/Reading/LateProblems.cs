namespace Byrelaw.Records.Reading;

/// <summary>What is known to be wrong only once both files are read.</summary>
internal sealed class LateProblems
{
    private readonly List<int> _bornTooLate = [];

    /// <summary>Makes births after the known day births on a day that is not known.</summary>
    public static LateProblems TakeOutBirthsAfter(int knownDay, AnimalTable animals)
    {
        var problems = new LateProblems();
        foreach (ref var row in animals.Rows.AsSpan())
        {
            if (row.BornFirst > knownDay)
            {
                problems._bornTooLate.Add(row.Line);
                (row.BornFirst, row.BornLast) = (Day.Start, Day.End);
            }
        }

        return problems;
    }

    /// <summary>What is wrong in the animals' file: births after the known day, and animals named twice.</summary>
    public IEnumerable<Diagnostic> OfAnimals(AnimalTable animals, int knownDay, Func<IEnumerable<int>, Dictionary<int, RowText>> find)
    {
        var texts = find([.. _bornTooLate, .. animals.Duplicates.Select(row => row.Line)]);
        foreach (var line in _bornTooLate)
        {
            yield return RecordDateProblems.BornAfterKnownDay(texts[line], animals.Columns!.Map["born"], knownDay);
        }

        foreach (var (line, firstLine) in animals.Duplicates)
        {
            yield return AnimalProblems.DuplicateAnimal(texts[line], animals.Columns!.Map["animal"], firstLine);
        }
    }

    /// <summary>What is wrong in the events' file: impossible dates, and mobs that no animal is ever in.</summary>
    public static IEnumerable<Diagnostic> OfEvents(
        HerdBuilder builder, EventColumns columns, AnimalTable animals, IReadOnlyList<string> mobNames, bool isFarAhead,
        Func<IEnumerable<int>, Dictionary<int, RowText>> find)
    {
        var texts = find([.. builder.Impossible.Select(row => row.Gap.Line), .. builder.OfUnknownMob.Select(row => row.Line)]);
        foreach (var (gap, born) in builder.Impossible)
        {
            yield return born is { } day
                ? RecordDateProblems.BeforeBirth(texts[gap.Line], columns.Date, animals.Numbers[gap.Animal], day, animals.Rows[gap.Animal].BornLast)
                : isFarAhead ? RecordDateProblems.FarAhead(texts[gap.Line], columns.Date, builder.KnownDay)
                : RecordDateProblems.AfterKnownDay(texts[gap.Line], columns.Date, builder.KnownDay);
        }

        foreach (var row in builder.OfUnknownMob)
        {
            var mob = mobNames[row.Mob];
            yield return AnimalProblems.UnknownMob(texts[row.Line], columns.Animal, mob, NearestName.OnlyOne(mob, builder.Mobs.Names));
        }
    }
}
