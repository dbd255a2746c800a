namespace Byrelaw.Records.Reading;

/// <summary>What is known to be wrong only once both files are read.</summary>
internal sealed class LateProblems
{
    /// <summary>No cow is older.</summary>
    internal const int OldestYears = 30;

    private readonly List<int> _bornTooLate = [];
    private readonly List<int> _bornTooEarly = [];
    private readonly List<int> _parityTooLate = [];

    /// <summary>Lines of births that are too long ago.</summary>
    public IReadOnlyList<int> BornTooEarly => _bornTooEarly;

    /// <summary>Makes births after the known day, and those more than 30 years before it, births on a day that is not known, and
    /// parities of a later day parities of a day that is not known.</summary>
    public static LateProblems TakeOutBirths(int knownDay, AnimalTable animals)
    {
        var problems = new LateProblems();
        var oldest = Day.Number(Day.Date(knownDay).PlusYears(-OldestYears));
        foreach (ref var row in animals.Rows.AsSpan())
        {
            if (row.BornFirst > knownDay)
            {
                problems._bornTooLate.Add(row.Line);
                (row.BornFirst, row.BornLast, row.BirthIsUnreadable) = (Day.Start, Day.End, true);
            }
            else if (row.BornFirst > Day.Start && row.BornLast < oldest)
            {
                problems._bornTooEarly.Add(row.Line);
                (row.BornFirst, row.BornLast, row.BirthIsUnreadable) = (Day.Start, Day.End, true);
            }

            if (row.ParityOn > knownDay && row.ParityOn < Day.End)
            {
                problems._parityTooLate.Add(row.Line);
                row.ParityOn = Day.Start;
            }
        }

        return problems;
    }

    /// <summary>What is wrong in the animals' file: births after the known day, and animals named twice.</summary>
    public IEnumerable<Diagnostic> OfAnimals(AnimalTable animals, int knownDay, Func<IEnumerable<int>, Dictionary<int, RowText>> find)
    {
        var texts = find([.. _bornTooLate, .. _bornTooEarly, .. _parityTooLate, .. animals.Duplicates.Select(row => row.Line)]);
        foreach (var line in _bornTooLate)
        {
            yield return RecordDateProblems.BornAfterKnownDay(texts[line], animals.Columns!.Map["born"], knownDay);
        }

        foreach (var line in _bornTooEarly)
        {
            yield return RecordDateProblems.BornLongAgo(texts[line], animals.Columns!.Map["born"], OldestYears);
        }

        foreach (var line in _parityTooLate)
        {
            yield return RecordDateProblems.ParityAfterKnownDay(texts[line], animals.Columns!.Map["parity on"], knownDay);
        }

        foreach (var (line, firstLine) in animals.Duplicates)
        {
            yield return AnimalProblems.DuplicateAnimal(texts[line], animals.Columns!.Map["animal"], firstLine);
        }
    }

    /// <summary>Animals that a person says are one, though their rows say that they are two.</summary>
    public static IEnumerable<Diagnostic> OfSameAnimals(AnimalTable animals, Func<IEnumerable<int>, Dictionary<int, RowText>> find)
    {
        var texts = find([.. animals.NotOne.Select(row => row.Line)]);
        foreach (var (line, firstLine) in animals.NotOne)
        {
            yield return AnimalProblems.NotOneAnimal(texts[line], animals.Columns!.Map["animal"], firstLine);
        }
    }

    /// <summary>Rows that alone name a mob, whose name may be a slip for another's.</summary>
    public static IEnumerable<Diagnostic> OfMobs(IEnumerable<SlippedMob> mobs, bool ofAnimals, int cell, Func<IEnumerable<int>, Dictionary<int, RowText>> find)
    {
        SlippedMob[] slipped = [.. mobs.Where(mob => mob.Row.IsOfAnimals == ofAnimals)];
        var texts = find([.. slipped.Select(mob => mob.Row.Line)]);
        return slipped.Select(mob => AnimalProblems.MobNamedOnce(texts[mob.Row.Line], cell, mob.Name, mob.Meant));
    }

    /// <summary>What is wrong in the events' file: impossible dates, and mobs that no animal is ever in.</summary>
    public static IEnumerable<Diagnostic> OfEvents(
        HerdBuilder builder, EventColumns columns, Vocabulary vocabulary, AnimalTable animals, IReadOnlyList<string> mobNames, bool isFarAhead,
        Func<IEnumerable<int>, Dictionary<int, RowText>> find)
    {
        var texts = find([.. builder.Impossible.Select(row => row.Gap.Line), .. builder.OfUnknownMob.Select(row => row.Line), .. builder.Wrong.Select(row => row.Line), .. builder.SameSample.Select(row => row.Line)]);
        foreach (var (gap, born) in builder.Impossible)
        {
            yield return born is { } day
                ? RecordDateProblems.BeforeBirth(texts[gap.Line], columns.Date, animals.Numbers[gap.Animal], day, animals.Rows[gap.Animal].BornLast)
                : isFarAhead ? RecordDateProblems.FarAhead(texts[gap.Line], columns.Date, builder.KnownDay)
                : RecordDateProblems.AfterKnownDay(texts[gap.Line], columns.Date, builder.KnownDay);
        }

        foreach (var row in builder.Wrong)
        {
            yield return AnimalProblems.WrongAnimal(texts[row.Line], columns.Animal, vocabulary.Kinds[row.Kind].Name, animals.Numbers[row.Animal], row);
        }

        foreach (var row in builder.SameSample)
        {
            yield return ValueProblems.SameSample(texts[row.Line], columns.Value);
        }

        foreach (var row in builder.OfUnknownMob)
        {
            var mob = mobNames[row.Mob];
            yield return AnimalProblems.UnknownMob(texts[row.Line], columns.Animal, mob, NearestName.OnlyOne(mob, builder.Mobs.Names));
        }
    }
}
