namespace Byrelaw.Records.Building;

/// <summary>Makes <see cref="Coverage"/> out of what the farm declares, births, joining, leaving and gaps.</summary>
internal static class CoverageBuilder
{
    /// <summary>Puts it together.</summary>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm promises.</param>
    /// <param name="animals">In the order of the herd.</param>
    /// <param name="joined">By animal.</param>
    /// <param name="left">By animal.</param>
    /// <param name="knownDay">The day the records reach.</param>
    /// <param name="reach">By kind id: the day up to which it is written down, before an <c>until</c> says less.</param>
    /// <param name="gaps">Rows that cannot be read.</param>
    /// <param name="last">What sheets say of last entries; null for nothing.</param>
    public static Coverage Build(
        Vocabulary vocabulary, RecordKeeping? keeping, AnimalRow[] animals, int[] joined, int[] left, int knownDay, int[] reach, IEnumerable<Gap> gaps, KeptSinceLast? last)
    {
        var sorted = GapOrder.ByKind(FilteredCoverage.Gaps(vocabulary, TimedHeatCoverage.With(vocabulary, gaps)));
        var hasGaps = new bool[vocabulary.ById.Length];
        foreach (var gap in sorted)
        {
            if (gap.Kind < 0)
            {
                Array.Fill(hasGaps, true);
            }
            else
            {
                hasGaps[gap.Kind] = true;
            }
        }

        var promises = Promised.Of(vocabulary, keeping, reach, knownDay);
        TimedHeatCoverage.Follow(vocabulary, promises);
        int[] ofAll = last is null ? [] : [.. promises.Since];
        last?.AddTo(promises, animals.Length, knownDay);
        return FilteredCoverage.Following(vocabulary, new Coverage
        {
            Since = promises.Since,
            Reach = promises.Reach,
            SinceOfAll = ofAll,
            NoneFrom = FirstDays(vocabulary, keeping, promise => promise.IsNone),
            AgreedFrom = FirstDays(vocabulary, keeping, promise => promise is { Because: not null, Agreement: not null, Until: null }),
            Holes = Coverage.Sorted(promises.Holes),
            NeededFrom = NeededFrom(vocabulary, animals),
            Joined = joined,
            Left = left,
            KnownDay = knownDay,
            Gaps = sorted,
            HasGaps = hasGaps,
        });
    }

    /// <summary>By kind id: the first day of the last promise of some sort; after all days where there is none.</summary>
    private static int[] FirstDays(Vocabulary vocabulary, RecordKeeping? keeping, Func<Completeness, bool> which)
    {
        var first = new int[vocabulary.ById.Length];
        Array.Fill(first, Day.End);
        foreach (var promise in (keeping?.Complete ?? []).Where(which).OrderBy(promise => promise.Since))
        {
            foreach (var kind in promise.Kinds)
            {
                first[kind.Id] = Day.Number(promise.Since);
            }
        }

        return first;
    }

    /// <summary>As <see cref="Coverage.NeededFrom"/>.</summary>
    public static int[][] NeededFrom(Vocabulary vocabulary, AnimalRow[] animals)
    {
        var byAge = new Dictionary<TimeLength, int[]>();
        var fromBirth = Array.ConvertAll(animals, animal => animal.BornFirst);
        return [.. vocabulary.ById.Select(kind => kind is EventKind { NotBeforeAge: { } age } ? FromAge(age) : fromBirth)];

        int[] FromAge(TimeLength age)
        {
            if (!byAge.TryGetValue(age, out var from))
            {
                from = Array.ConvertAll(fromBirth, born => born <= Day.Start ? Day.Start : Day.Number(age.After(Day.Date(born))));
                byAge.Add(age, from);
            }

            return from;
        }
    }
}
