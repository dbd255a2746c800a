namespace Byrelaw.Judging.Criteria;

/// <summary>What results come to, from each of them to the last: added up from the last backwards and remembered, so that a window that
/// may begin on many days is not walked through for each.</summary>
/// <param name="run">The results.</param>
/// <param name="aggregate">Lowest, highest or average.</param>
internal sealed class BackwardTotals(KindRun run, Aggregate aggregate)
{
    private readonly List<(double Low, double High)> _from = [];
    private int _last = -1;

    /// <summary>The least and the greatest that they may come to.</summary>
    /// <param name="first">The place of the first result; of the same animal as the last.</param>
    /// <param name="last">That of the last.</param>
    /// <param name="steps">How many were added.</param>
    public (double Low, double High) Between(int first, int last, out int steps)
    {
        if (last != _last)
        {
            _from.Clear();
            _last = last;
        }

        steps = Math.Max(0, last - _from.Count - first + 1);
        for (var place = last - _from.Count; place >= first; place--)
        {
            _from.Add(_from.Count == 0 ? (run.Low[place], run.High[place]) : With(_from[^1], run.Low[place], run.High[place]));
        }

        var (low, high) = _from[last - first];
        var count = last - first + 1;
        return aggregate == Aggregate.Average ? (Limits.Round(low / count), Limits.Round(high / count)) : (low, high);
    }

    private (double Low, double High) With((double Low, double High) so, double low, double high) => aggregate switch
    {
        Aggregate.Average => (so.Low + low, so.High + high),
        Aggregate.Lowest => (Math.Min(so.Low, low), Math.Min(so.High, high)),
        _ => (Math.Max(so.Low, low), Math.Max(so.High, high)),
    };
}
