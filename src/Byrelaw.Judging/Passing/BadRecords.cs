using Byrelaw.Judging.Promises;

namespace Byrelaw.Judging.Passing;

/// <summary>What of a herd's records is there, and cannot be relied on.</summary>
internal sealed class BadRecords(HerdDays days)
{
    private readonly Herd _herd = days.Herd;
    private readonly Coverage _coverage = days.Coverage;
    private readonly HashSet<int> _bought = [.. BoughtWithoutDay.Find(days.Herd)];

    /// <summary>Whether her birth stands there and cannot be read: then nothing that is reckoned from it is simply not there.</summary>
    public bool HasUnreadableBirth(int animal) => _herd.BirthIsUnreadable is { Length: > 0 } unreadable && unreadable[animal];

    /// <summary>Whether a fact of hers stands there and cannot be read, or cannot be.</summary>
    public bool IsUnreadable(int animal, int fact) => _herd.Facts[fact].States[animal] == FactState.Unreadable;

    /// <summary>Whether a row that cannot be read may be one of hers of a kind, in these days.</summary>
    public bool HasGap(int animal, int kind, int from, int to) => _coverage.AnyGap(animal, kind, from, to);

    /// <summary>Whether rows that cannot be read, or promises that are not believed, touch a kind at all.</summary>
    public bool Touch(int kind) => _coverage.HasGaps[kind] || SetAside(kind) < Day.End || Array.Exists(_coverage.Holes, hole => hole.IsDoubt && hole.Kind == kind);

    /// <summary>Whether nothing is believed to be complete for her.</summary>
    public bool IsNotBelieved(int animal) => _bought.Count > 0 && _coverage.Joined[animal] == Day.End && _bought.Contains(animal);

    /// <summary>Whether, on one of these days, a promise of a kind is not believed of her.</summary>
    public bool IsNotBelieved(int animal, int kind, int from, int to)
    {
        from = Math.Max(from, _coverage.NeededFrom[kind][animal]);
        return to >= from && (SetAside(kind) <= to || IsNotBelieved(animal)
            || Array.Exists(_coverage.Holes, hole => hole.IsDoubt && hole.Kind == kind && (hole.Animal < 0 || hole.Animal == animal) && hole.From <= to && hole.To >= from));
    }

    /// <summary>Whether a result of hers in these days is not known or vague, or several of one day differ.</summary>
    public bool HasUncertainResult(int animal, int kind, int from, int to)
    {
        var run = _herd.Runs[kind];
        return IsUncertain(run.Days, run.Low, run.High, run.Answers, run.Starts[animal], Runs.LastAtMost(run, animal, to), from);
    }

    /// <summary>The same of any stretch of results, the last of which has the place given.</summary>
    public static bool IsUncertain(int[] days, double[] low, double[] high, byte[] answers, int start, int last, int from)
    {
        for (var i = last; i >= start && days[i] >= from; i--)
        {
            var follows = i > start && days[i - 1] == days[i];
            if ((answers.Length > 0 && (answers[i] == KindRun.NotKnown || (follows && answers[i - 1] != answers[i])))
                || (low.Length > 0 && (low[i] < high[i] || (follows && low[i - 1] != low[i]))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The first day of a promise of this kind that is not believed of anybody; <see cref="Day.End"/> for none.</summary>
    private int SetAside(int kind) => _coverage.SetAside.Length == 0 ? Day.End : _coverage.SetAside[_herd.Vocabulary.ById[kind].Declaration.Id];
}
