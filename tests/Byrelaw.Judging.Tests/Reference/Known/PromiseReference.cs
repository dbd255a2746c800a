namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// Which days a farm's promises for one kind hold. "`until` is the last day covered"; a promise without it is covered as far as the kind's
/// own records reach, and the days from there to the known day are past, and not covered. Later days are judged as if nothing more
/// happens, after the last stretch.
/// </summary>
public sealed class PromiseReference
{
    private readonly List<Completeness> _promises;
    private readonly int _known;
    private readonly Func<Completeness, int> _reach;

    /// <param name="keeping">What the farm says.</param>
    /// <param name="kind">Of what.</param>
    /// <param name="known">The known day.</param>
    /// <param name="latestEntry">The latest day on which the kind is on record; null for none.</param>
    public PromiseReference(RecordKeeping? keeping, Kind kind, int known, int? latestEntry)
    {
        _known = known;
        _promises = [.. (keeping?.Complete ?? []).Where(complete => complete.Kinds.Any(one => one.Id == kind.Declaration.Id)).OrderBy(complete => complete.Since)];
        _reach = promise => promise.Until is { } said ? DayNumber.Of(said) : keeping!.UpTo is null ? latestEntry ?? int.MinValue : known;

        // A promise of which nothing says how far it reaches covers nothing.
        if (_promises.Count > 0 && _promises[^1].Until is null && keeping!.UpTo is null && latestEntry is null)
        {
            _promises.Clear();
        }
    }

    /// <summary>The first day promised; null where nothing is.</summary>
    public int? Since => _promises.Count == 0 ? null : DayNumber.Of(_promises[0].Since);

    /// <summary>Whether a day is promised.</summary>
    public bool Holds(int day)
    {
        foreach (var promise in _promises)
        {
            var isLast = promise == _promises[^1];
            if (day >= DayNumber.Of(promise.Since) && (day <= _reach(promise) || (isLast && day > _known)))
            {
                return true;
            }
        }

        return false;
    }
}
