namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>How often something happened, and what that says of the last time.</summary>
internal sealed class CountClaims(Quantities quantities, Happenings happenings, WindowClaims windows)
{
    private readonly Dictionary<string, Family> _sameKinds = new(StringComparer.Ordinal);
    private readonly Dictionary<int, ImmutableArray<Window>> _windowsOf = [];

    /// <summary>The quantity "how many in these windows".</summary>
    public sealed record CountKey(string Kinds, string Windows);

    public Claim Of(CountCondition condition, bool isTrue)
    {
        var stretch = NumberStretch.Of(condition.Test);
        return isTrue
            ? Of(condition, stretch)
            : Of(condition, new NumberStretch(0, stretch.Low - 1)).Or(Of(condition, new NumberStretch(stretch.High + 1, double.PositiveInfinity)));
    }

    private Claim Of(CountCondition condition, NumberStretch stretch)
    {
        if (stretch.High < Math.Max(0, stretch.Low) || double.IsPositiveInfinity(stretch.Low))
        {
            return Claim.Never;
        }

        var counted = condition.Counted.Where(one => WindowClaims.CanHold(condition.Windows, one.Kind)).ToList();
        if (counted.Count == 0)
        {
            return stretch.Low <= 0 ? Claim.Anything : Claim.Never;
        }

        var claim = stretch.Holds(Count(counted, condition.Windows), condition);
        var kinds = counted.Select(one => happenings.Of(one.Kind, one.Answer)).ToList();
        if (stretch.High == 0)
        {
            return claim.And(Claim.All(kinds.Select(kind => windows.None(kind, condition.Windows, condition))));
        }

        return stretch.Low >= 1 ? claim.And(Claim.Any(kinds.Select(kind => windows.Some(kind, condition.Windows, condition)))) : claim;
    }

    private int Count(List<Counted> counted, ImmutableArray<Window> shown)
    {
        var kinds = string.Join('+', counted.Select(one => $"{one.Kind.Id}.{one.Answer}").Distinct().Order(StringComparer.Ordinal));
        if (!_sameKinds.TryGetValue(kinds, out var family))
        {
            _sameKinds[kinds] = family = new Family(
                _sameKinds.Count, (one, other) => WindowKey.Contains(_windowsOf[one], _windowsOf[other]), one => WindowKey.RowOf(_windowsOf[one]));
        }

        return quantities.Number(new CountKey(kinds, WindowKey.Of(shown)), count => Relations(count, counted, shown), family);
    }

    private List<Bound> Relations(int count, List<Counted> counted, ImmutableArray<Window> shown)
    {
        _windowsOf[count] = shown;
        var relations = new List<Bound> { Bound.Above(count, 0, null) };
        foreach (var last in shown.OfType<InTheLast>())
        {
            // Each once a day.
            relations.Add(Bound.Below(count, (DaysLong.Of(last.Length).Most + 1.0) * counted.Count, null));
        }

        if (counted.Count == 1 && happenings.Of(counted[0].Kind, counted[0].Answer).IsCalving)
        {
            relations.Add(Bound.Longer(happenings.Parity, count, default, null));
        }

        return relations;
    }
}
