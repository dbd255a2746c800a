namespace Byrelaw.Language.Reasoning;

/// <summary>
/// Whether there can be an animal of whom some conditions are true and others false. Alternatives are tried one after
/// another. "No" is proved: every way leads to a contradiction, and the conditions in it are kept.
/// </summary>
/// <param name="quantities">What conditions speak of.</param>
/// <param name="isShared">Whether all that says the same is one formula: then one that is asked for and against is a contradiction, which
/// blames nobody.</param>
internal sealed class Search(Quantities quantities, bool isShared = false)
{
    // A search that grows beyond this is given up: then nothing is claimed.
    private const int MostSteps = 4000;

    private readonly Demands _demands = new(quantities);
    private readonly AskedFor _asked = new();
    private int _steps;
    private long _looks;
    private bool _isFound;

    /// <summary>After a "no": the conditions that contradict each other, in the order in which they were met.</summary>
    public IReadOnlyList<Condition> Conflict => _demands.Conflict;

    /// <summary>After a "yes": what must hold of the animal that was found. (Few ask; it is put together when they do.)</summary>
    public Together Found => _isFound ? _demands.Together : Together.Nothing;

    /// <summary>How much work all questions took.</summary>
    public long Steps => _looks + _demands.Steps;

    /// <summary>Whether an animal can be as asked: false only where none can. What is not followed to its end may be.</summary>
    public bool CanBe(params (Formula Formula, bool Holds)[] asked)
    {
        _demands.Clear();
        _asked.GoBack(0);
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
        if (++_steps > MostSteps || _demands.IsTired)
        {
            return true;
        }

        // What leaves no choice is held against each other once, when all of it is known.
        var certain = new List<Together>();
        while (wishes is var (formula, holds, next))
        {
            wishes = next;
            _looks++;
            if (isShared && formula != Formula.Unclear && _asked.Has(formula, !holds))
            {
                return false;
            }

            if (!_asked.Add(formula, holds))
            {
                continue;
            }

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

        if (!_demands.AddAll(certain))
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

        return firsts.Count > 1 && _demands.AddIfTheyFit(firsts);
    }

    private static int Needed(AtLeast list, bool holds) => holds ? list.Count : list.Items.Length - list.Count + 1;

    private bool EachWay(SingleCondition leaf, Wish wish)
    {
        foreach (var alternative in (wish.Holds ? leaf.WhenTrue : leaf.WhenFalse).Alternatives)
        {
            var before = (_demands.Here, _asked.Count);
            if (_demands.Add(alternative) && Try(null, wish.Next))
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
        var before = (_demands.Here, _asked.Count);
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

    private void GoBack((Demands.Place Demands, int Asked) to)
    {
        _demands.GoBack(to.Demands);
        _asked.GoBack(to.Asked);
    }

    /// <summary>A condition that must be true, or false, and those after it.</summary>
    private sealed record Wish(Formula Formula, bool Holds, Wish? Next);
}
