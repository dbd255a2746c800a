namespace Byrelaw.Records.Building;

/// <summary>
/// A timed heat is worked out from what was given, and is covered where that is: who promises to write down every hormone has promised it too, and what is in doubt of a hormone is in
/// doubt of it. A promise of its own adds nothing.
/// </summary>
internal static class TimedHeatCoverage
{
    /// <summary>Puts the promise of what is given in place of its own.</summary>
    public static void Follow(Vocabulary vocabulary, Promised promises)
    {
        if (vocabulary.TimedHeat is not { Timed.Id: var timed, Given.Id: var given })
        {
            return;
        }

        promises.Since[timed] = promises.Since[given];
        promises.Reach[timed] = promises.Reach[given];
        promises.Holes.RemoveAll(hole => hole.Kind == timed);
        promises.Holes.AddRange(promises.Holes.Where(hole => hole.Kind == given).Select(hole => hole with { Kind = timed }).ToList());
    }

    /// <summary>Gaps, with those that it shares.</summary>
    public static IEnumerable<Gap> With(Vocabulary vocabulary, IEnumerable<Gap> gaps)
    {
        var kinds = vocabulary.TimedHeat;
        foreach (var gap in gaps)
        {
            yield return gap;
            if (kinds is { } both && gap.Kind == both.Given.Id)
            {
                yield return gap with { Kind = both.Timed.Id };
            }
        }
    }
}
