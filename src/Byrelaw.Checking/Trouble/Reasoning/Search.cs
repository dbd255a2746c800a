namespace Byrelaw.Checking.Trouble.Reasoning;

/// <summary>
/// Whether there can be an animal of whom some conditions are true and others false. Alternatives are tried one after
/// another. "No" is proved: every way leads to a contradiction, and the conditions in it are kept.
/// </summary>
internal sealed class Search(Quantities quantities)
{
    // A search that grows beyond this is given up: then nothing is claimed.
    private const int MostSteps = 4000;

    private readonly Consistency _consistency = new(quantities);
    private readonly List<Bound> _bounds = [];
    private readonly List<OneOf> _texts = [];
    private readonly List<Condition> _conflict = [];

    // What is asked for on this way already. A define is one formula, however many speak of it, and is asked for once.
    private readonly HashSet<(Formula, bool)> _asked = new(Asked.Instance);
    private readonly List<(Formula, bool)> _inOrder = [];
    private int _steps;
    private long _looks;
    private bool _isFound;

    /// <summary>After a "no": the conditions that contradict each other, in the order in which they were met.</summary>
    public IReadOnlyList<Condition> Conflict => _conflict;

    /// <summary>After a "yes": what must hold of the animal that was found. (Few ask; it is put together when they do.)</summary>
    public Together Found => _isFound ? new Together([.. _bounds], [.. _texts]) : Together.Nothing;

    /// <summary>How much work all questions took.</summary>
    public long Steps => _looks + _consistency.Steps;

    /// <summary>Whether an animal can be as asked: false only where none can. What is not followed to its end may be.</summary>
    public bool CanBe(params (Formula Formula, bool Holds)[] asked)
    {
        _bounds.Clear();
        _texts.Clear();
        _conflict.Clear();
        Forget(0);
        _consistency.Rest();
        _steps = 0;
        _isFound = false;
        Wish? wishes = null;
        for (var i = asked.Length - 1; i >= 0; i--)
        {
            wishes = new Wish(asked[i].Formula, asked[i].Holds, wishes);
        }

        return Try(wishes, null);
    }

    /// <summary>First what leaves no choice; then the choices that were put off, each way in turn.</summary>
    private bool Try(Wish? wishes, Wish? later)
    {
        if (++_steps > MostSteps || _consistency.IsTired)
        {
            return true;
        }

        // What leaves no choice is held against each other once, when all of it is known.
        var certain = new List<Together>();
        while (wishes is var (formula, holds, next))
        {
            wishes = next;
            _looks++;
            if (!_asked.Add((formula, holds)))
            {
                continue;
            }

            _inOrder.Add((formula, holds));
            switch (formula)
            {
                case Opposite opposite:
                    wishes = new Wish(opposite.Of, !holds, wishes);
                    break;
                case AtLeast list when Needed(list, holds) == list.Items.Length:
                    for (var i = list.Items.Length - 1; i >= 0; i--)
                    {
                        wishes = new Wish(list.Items[i], holds, wishes);
                    }

                    break;
                case AtLeast list when Needed(list, holds) <= 0:
                    break;
                case SingleCondition leaf when (holds ? leaf.WhenTrue : leaf.WhenFalse).Alternatives is [var only]:
                    certain.Add(only);
                    break;
                default:
                    later = new Wish(formula, holds, later);
                    break;
            }
        }

        if (!AddAll(certain))
        {
            return false;
        }

        return later switch
        {
            null => Keep(),
            _ when FirstOfEach(later) => Keep(),
            { Formula: SingleCondition leaf } => EachWay(leaf, later),
            { Formula: AtLeast list } => WithOrWithout(list, later),
            _ => true,
        };
    }

    /// <summary>The first way of each choice, all at once: where they fit together, they are what trying one after another would come to.</summary>
    private bool FirstOfEach(Wish choices)
    {
        var firsts = new List<Together>();
        for (var choice = choices; choice is not null; choice = choice.Next)
        {
            if (choice.Formula is not SingleCondition leaf || (choice.Holds ? leaf.WhenTrue : leaf.WhenFalse).Alternatives is not [var first, ..])
            {
                return false;
            }

            firsts.Add(first);
        }

        var (bounds, texts) = (_bounds.Count, _texts.Count);
        if (firsts.Count > 1 && CanAdd(firsts, firsts.Count, tell: false))
        {
            return true;
        }

        _bounds.RemoveRange(bounds, _bounds.Count - bounds);
        _texts.RemoveRange(texts, _texts.Count - texts);
        return false;
    }

    private static int Needed(AtLeast list, bool holds) => holds ? list.Count : list.Items.Length - list.Count + 1;

    private bool EachWay(SingleCondition leaf, Wish wish)
    {
        foreach (var alternative in (wish.Holds ? leaf.WhenTrue : leaf.WhenFalse).Alternatives)
        {
            var before = Mark();
            if (Add(alternative) && Try(null, wish.Next))
            {
                return true;
            }

            GoBack(before);
        }

        return false;
    }

    /// <summary>Of a list of which some hold: either the first does, or the others do without it.</summary>
    private bool WithOrWithout(AtLeast list, Wish wish)
    {
        var needed = Needed(list, wish.Holds);
        var rest = list.Items.RemoveAt(0);
        var before = Mark();
        if (Try(new Wish(list.Items[0], wish.Holds, Rest(needed - 1)), wish.Next))
        {
            return true;
        }

        GoBack(before);
        return Try(Rest(needed), wish.Next);

        Wish? Rest(int of) => of <= 0 ? null : new Wish(new AtLeast(wish.Holds ? of : rest.Length - of + 1, rest), wish.Holds, null);
    }

    private bool Keep()
    {
        _isFound = true;
        return true;
    }

    private (int Bounds, int Texts, int Asked) Mark() => (_bounds.Count, _texts.Count, _inOrder.Count);

    private void GoBack((int Bounds, int Texts, int Asked) to)
    {
        _bounds.RemoveRange(to.Bounds, _bounds.Count - to.Bounds);
        _texts.RemoveRange(to.Texts, _texts.Count - to.Texts);
        Forget(to.Asked);
    }

    private void Forget(int from)
    {
        for (var i = from; i < _inOrder.Count; i++)
        {
            _asked.Remove(_inOrder[i]);
        }

        _inOrder.RemoveRange(from, _inOrder.Count - from);
    }

    /// <summary>Adds all of them; where they contradict each other, as many as it takes, so that the contradiction told is the first one met.</summary>
    private bool AddAll(List<Together> certain)
    {
        var (bounds, texts) = (_bounds.Count, _texts.Count);
        if (CanAdd(certain, certain.Count, tell: false))
        {
            return true;
        }

        var (fits, fails) = (0, certain.Count);
        while (fits + 1 < fails)
        {
            var middle = (fits + fails) / 2;
            Undo();
            (fits, fails) = CanAdd(certain, middle, tell: false) ? (middle, fails) : (fits, middle);
        }

        Undo();
        return CanAdd(certain, fails, tell: true);

        void Undo()
        {
            _bounds.RemoveRange(bounds, _bounds.Count - bounds);
            _texts.RemoveRange(texts, _texts.Count - texts);
        }
    }

    private bool CanAdd(List<Together> certain, int count, bool tell)
    {
        var hasBounds = false;
        var before = _texts.Count;
        for (var i = 0; i < count; i++)
        {
            _bounds.AddRange(certain[i].Bounds);
            hasBounds |= certain[i].Bounds.Length > 0;
            _texts.AddRange(certain[i].Texts);
        }

        if (_texts.Count > before && TextConflict(before) is { } texts)
        {
            if (tell)
            {
                Blame(texts.Select(other => other.From));
            }

            return false;
        }

        if (hasBounds && _consistency.Contradiction(_bounds) is { } circle)
        {
            if (tell)
            {
                Blame(circle.Select(bound => bound.From));
            }

            return false;
        }

        return true;
    }

    private bool Add(Together together)
    {
        var before = _texts.Count;
        _bounds.AddRange(together.Bounds);
        _texts.AddRange(together.Texts);
        if (_texts.Count > before && TextConflict(before) is { } texts)
        {
            Blame(texts.Select(other => other.From));
            return false;
        }

        if (together.Bounds.Length > 0 && _consistency.Contradiction(_bounds) is { } circle)
        {
            Blame(circle.Select(bound => bound.From));
            return false;
        }

        return true;
    }

    private void Blame(IEnumerable<Condition?> conditions)
    {
        foreach (var condition in conditions)
        {
            if (condition is not null && !_conflict.Exists(other => ReferenceEquals(other, condition)))
            {
                _conflict.Add(condition);
            }
        }
    }

    /// <summary>The demands on one text, of those spoken of from a place on, where no value meets them all.</summary>
    private List<OneOf>? TextConflict(int from)
    {
        _looks += _texts.Count;
        var spokenOf = new HashSet<int>();
        for (var i = from; i < _texts.Count; i++)
        {
            spokenOf.Add(_texts[i].Text);
        }

        foreach (var demands in _texts.Where(demand => spokenOf.Contains(demand.Text)).GroupBy(demand => demand.Text))
        {
            if (!IsPossible(demands, quantities.DomainOf(demands.Key)))
            {
                return [.. demands];
            }
        }

        return null;
    }

    /// <summary>Whether some value meets all demands. Of an open text one must be asked for before any can be missing.</summary>
    private static bool IsPossible(IEnumerable<OneOf> demands, IReadOnlyList<string>? domain)
    {
        HashSet<string>? left = domain is null ? null : [.. domain];
        var mustNotBe = new HashSet<string>();
        foreach (var demand in demands)
        {
            if (demand.IsNot)
            {
                mustNotBe.UnionWith(demand.Values);
            }
            else if (left is null)
            {
                left = [.. demand.Values];
            }
            else
            {
                left.IntersectWith(demand.Values);
            }
        }

        return left is null || left.Any(value => !mustNotBe.Contains(value));
    }

    /// <summary>Tells formulas apart by which they are: two that say the same are two.</summary>
    private sealed class Asked : IEqualityComparer<(Formula Formula, bool Holds)>
    {
        public static readonly Asked Instance = new();

        public bool Equals((Formula Formula, bool Holds) one, (Formula Formula, bool Holds) other) =>
            ReferenceEquals(one.Formula, other.Formula) && one.Holds == other.Holds;

        public int GetHashCode((Formula Formula, bool Holds) asked) =>
            HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(asked.Formula), asked.Holds);
    }

    /// <summary>A condition that must be true, or false, and those after it.</summary>
    private sealed record Wish(Formula Formula, bool Holds, Wish? Next);
}
