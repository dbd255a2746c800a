using System.Runtime.InteropServices;

namespace Byrelaw.Language.Reasoning;

/// <summary>
/// Whether some numbers meet a set of bounds. Each bound is an arrow of a graph; the bounds contradict each other where the
/// arrows run in a circle whose sum is below nought (Bellman and Ford).
/// </summary>
internal sealed class Consistency(Quantities quantities)
{
    // Sums of decimal numbers are not exact.
    private const double Hair = 1e-6;

    // More than this is not looked at for one question: then nothing is claimed.
    private const long MostWork = 20_000_000;

    private readonly List<Bound> _arrows = [];
    private readonly List<int> _nodes = [];
    private readonly Dictionary<Family, List<int>> _families = [];
    private int[] _places = [];
    private double[] _distances = [];
    private Bound?[] _came = [];
    private long _work;
    private long _stepsBefore;

    /// <summary>Whether one question has taken so much work that it is given up.</summary>
    public bool IsTired => _work > MostWork;

    /// <summary>How often an arrow was looked at, or two quantities held against each other, for all questions: what a test holds against the size of a file.</summary>
    public long Steps => _stepsBefore + _work;

    /// <summary>The next question begins.</summary>
    public void Rest()
    {
        _stepsBefore += _work;
        _work = 0;
    }

    /// <summary>The bounds that contradict each other; null where none do.</summary>
    public List<Bound>? Contradiction(List<Bound> bounds)
    {
        Gather(bounds);
        return Directly() ?? Relax(bound => bound.AtMost);
    }

    /// <summary>Numbers that meet the bounds however months may fall, each as small as can be; null where none are found.</summary>
    public Dictionary<int, double>? Numbers(List<Bound> bounds)
    {
        Gather(bounds);
        if (Relax(bound => bound.Surely) is not null)
        {
            return null;
        }

        // The longest way from nought is the least number. Arrows turned round, the shortest way to nought is its opposite.
        Array.Fill(_distances, double.PositiveInfinity, 0, _nodes.Count);
        _distances[_places[Quantities.Nought]] = 0;
        var isSettled = false;
        for (var round = 0; round < _nodes.Count && !isSettled; round++)
        {
            isSettled = true;
            foreach (var arrow in InTurn(round))
            {
                ref var x = ref _distances[_places[arrow.Y]];
                var through = _distances[_places[arrow.X]] + arrow.Surely;
                isSettled &= !(through < x);
                x = Math.Min(x, through);
            }
        }

        return _nodes.ToDictionary(node => node, node => -_distances[_places[node]]);
    }

    private void Gather(List<Bound> bounds)
    {
        foreach (var node in _nodes)
        {
            _places[node] = 0;
        }

        _nodes.Clear();
        _arrows.Clear();
        _families.Clear();
        if (_places.Length < quantities.Count)
        {
            _places = new int[quantities.Count];
        }

        Add(Quantities.Nought);
        foreach (var bound in bounds)
        {
            Add(bound.X);
            Add(bound.Y);
            _arrows.Add(bound);
        }

        for (var i = 1; i < _nodes.Count; i++)
        {
            foreach (var bound in quantities.RelationsOf(_nodes[i]))
            {
                if (IsThere(bound.X) && IsThere(bound.Y))
                {
                    _arrows.Add(bound);
                }
            }

            if (quantities.FamilyOf(_nodes[i]) is { } family)
            {
                (CollectionsMarshal.GetValueRefOrAddDefault(_families, family, out _) ??= []).Add(_nodes[i]);
            }
        }

        foreach (var (family, members) in _families)
        {
            _work += family.Add(members, _arrows);
        }

        for (var i = 0; i < _nodes.Count; i++)
        {
            _places[_nodes[i]] = i;
        }

        if (_distances.Length < _nodes.Count)
        {
            _distances = new double[2 * _nodes.Count];
            _came = new Bound?[2 * _nodes.Count];
        }
    }

    private void Add(int node)
    {
        if (!IsThere(node))
        {
            _nodes.Add(node);
            _places[node] = -1;
        }
    }

    private bool IsThere(int node) => node == Quantities.Nought ? _nodes.Count > 0 : _places[node] != 0;

    /// <summary>A lower limit of one quantity above an upper one: to the last digit, and where both are in months to the day,
    /// which the number of their days would not tell.</summary>
    private List<Bound>? Directly()
    {
        var highs = _arrows.Where(arrow => arrow.Y == Quantities.Nought).ToLookup(arrow => arrow.X);
        _work += _arrows.Count;
        foreach (var low in _arrows)
        {
            if (low.X != Quantities.Nought)
            {
                continue;
            }

            foreach (var high in highs[low.Y])
            {
                _work++;
                if (IsAbove(low, high))
                {
                    return [low, high];
                }
            }
        }

        return null;
    }

    private static bool IsAbove(Bound low, Bound high) =>
        -low.AtMost > high.AtMost || (low.Length is { } least && high.Length is { } most && least.Months == most.Months && least.Days > most.Days);

    /// <summary>The arrows in their order and then in the other: what a row of quantities hands on reaches its end in one round or two.</summary>
    private IEnumerable<Bound> InTurn(int round)
    {
        for (var i = 0; i < _arrows.Count; i++)
        {
            yield return _arrows[round % 2 == 0 ? i : _arrows.Count - 1 - i];
        }
    }

    private List<Bound>? Relax(Func<Bound, double> weight)
    {
        Array.Clear(_distances, 0, _nodes.Count);
        Array.Clear(_came, 0, _nodes.Count);
        var changed = -1;
        for (var round = 0; round < _nodes.Count; round++)
        {
            changed = -1;
            _work += _arrows.Count;
            if (IsTired)
            {
                return null;
            }

            foreach (var arrow in InTurn(round))
            {
                var (from, to) = (_places[arrow.Y], _places[arrow.X]);
                if (_distances[from] + weight(arrow) < _distances[to] - Hair)
                {
                    _distances[to] = _distances[from] + weight(arrow);
                    _came[to] = arrow;
                    changed = to;
                }
            }

            if (changed < 0)
            {
                return null;
            }
        }

        return Circle(changed);
    }

    /// <summary>The arrows of the circle, found by walking back from where a number still changed.</summary>
    private List<Bound> Circle(int at)
    {
        for (var i = 0; i < _nodes.Count; i++)
        {
            at = _places[_came[at]!.Y];
        }

        var circle = new List<Bound>();
        var start = at;
        do
        {
            circle.Add(_came[at]!);
            at = _places[_came[at]!.Y];
        }
        while (at != start);
        return circle;
    }
}
