namespace Byrelaw.Records.Building;

/// <summary>The coverage of a kind with a filter is the kind's.</summary>
internal static class FilteredCoverage
{
    /// <summary>All gaps: a row that may be of a kind may be of it with any filter too.</summary>
    public static IEnumerable<Gap> Gaps(Vocabulary vocabulary, IEnumerable<Gap> gaps)
    {
        Kind[] filtered = [.. vocabulary.Filtered];
        if (filtered.Length == 0)
        {
            return gaps;
        }

        Gap[] own = [.. gaps];
        return own.Concat(filtered.SelectMany(kind => own.Where(gap => gap.Kind == kind.Declaration.Id).Select(gap => gap with { Kind = kind.Id })));
    }

    /// <summary>The same coverage, in which kinds with a filter are promised as their kinds are.</summary>
    public static Coverage Following(Vocabulary vocabulary, Coverage coverage)
    {
        Kind[] filtered = [.. vocabulary.Filtered];
        if (filtered.Length == 0)
        {
            return coverage;
        }

        var (since, reach) = ((int[])coverage.Since.Clone(), (int[])coverage.Reach.Clone());
        List<Hole> holes = [.. coverage.Holes.Where(hole => vocabulary.ById[hole.Kind].Filter is null)];
        foreach (var kind in filtered)
        {
            var of = kind.Declaration.Id;
            (since[kind.Id], reach[kind.Id]) = (since[of], reach[of]);
            holes.AddRange(coverage.Holes.Where(hole => hole.Kind == of).Select(hole => hole with { Kind = kind.Id }));
        }

        return coverage.With(since, reach, holes);
    }
}
