namespace Byrelaw.Records.Building;

/// <summary>Makes <see cref="Coverage"/> out of what the farm declares, births, joining, leaving and gaps.</summary>
internal static class CoverageBuilder
{
    /// <summary>Puts it together.</summary>
    public static Coverage Build(
        Vocabulary vocabulary, RecordKeeping? keeping, AnimalRow[] animals, int[] joined, int[] left, int knownDay, IEnumerable<Gap> gaps)
    {
        Gap[] sorted = [.. gaps.OrderBy(gap => gap.Kind).ThenBy(gap => gap.Animal).ThenBy(gap => gap.From).ThenBy(gap => gap.Line)];
        var hasGaps = new bool[vocabulary.Kinds.Length];
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

        return new Coverage
        {
            Since = Since(vocabulary, keeping),
            NeededFrom = NeededFrom(vocabulary, animals),
            Joined = joined,
            Left = left,
            KnownDay = knownDay,
            Gaps = sorted,
            HasGaps = hasGaps,
        };
    }

    private static int[] Since(Vocabulary vocabulary, RecordKeeping? keeping)
    {
        var since = new int[vocabulary.Kinds.Length];
        Array.Fill(since, Day.End);
        foreach (var complete in keeping?.Complete ?? [])
        {
            foreach (var kind in complete.Kinds)
            {
                since[kind.Id] = Math.Min(since[kind.Id], Day.Number(complete.Since));
            }
        }

        return since;
    }

    private static int[][] NeededFrom(Vocabulary vocabulary, AnimalRow[] animals)
    {
        var byAge = new Dictionary<TimeLength, int[]>();
        var fromBirth = Array.ConvertAll(animals, animal => animal.BornFirst);
        return [.. vocabulary.Kinds.Select(kind => kind is EventKind { NotBeforeAge: { } age } ? FromAge(age) : fromBirth)];

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
