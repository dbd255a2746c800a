using System.Numerics;

namespace Byrelaw.Language.Reasoning;

/// <summary>
/// The quantities and texts that formulas speak of. Two formulas that share none, and none that are related, have nothing to
/// do with each other, and need not be held against each other.
/// </summary>
internal sealed class Touched
{
    private readonly Places _quantities = new();
    private readonly Places _related = new();
    private readonly Places _families = new();
    private readonly Places _texts = new();
    private readonly HashSet<Formula> _seen = new(ReferenceEqualityComparer.Instance);
    private bool _speaksOfAge;
    private bool _limitsAge;

    /// <summary>What formulas speak of.</summary>
    /// <param name="quantities">All quantities.</param>
    /// <param name="age">Her age: everything that happened to her lies within it, so it counts only where one of two limits it.</param>
    /// <param name="formulas">The formulas.</param>
    public static Touched By(Quantities quantities, int age, params Formula[] formulas)
    {
        var touched = new Touched();
        foreach (var formula in formulas)
        {
            touched.Add(formula, quantities, age);
        }

        return touched;
    }

    /// <summary>What this one speaks of, in keys; two have to do with each other where one's <see cref="Asked"/> are among the other's.</summary>
    public IEnumerable<(Sort Sort, int Place)> Keys =>
        _quantities.All.Select(place => (Sort.Quantity, place))
            .Concat(_related.All.Select(place => (Sort.Related, place)))
            .Concat(_texts.All.Select(place => (Sort.Text, place)))
            .Concat(_families.All.Select(place => (Sort.Family, place)))
            .Concat(_speaksOfAge ? [(Sort.SpeaksOfAge, 0)] : [])
            .Concat(_limitsAge ? [(Sort.LimitsAge, 0)] : []);

    /// <summary>The keys of whatever has to do with this one.</summary>
    public IEnumerable<(Sort Sort, int Place)> Asked =>
        _quantities.All.SelectMany(place => new[] { (Sort.Quantity, place), (Sort.Related, place) })
            .Concat(_related.All.Select(place => (Sort.Quantity, place)))
            .Concat(_texts.All.Select(place => (Sort.Text, place)))
            .Concat(_families.All.Select(place => (Sort.Family, place)))
            .Concat(_speaksOfAge ? [(Sort.LimitsAge, 0)] : [])
            .Concat(_limitsAge ? [(Sort.SpeaksOfAge, 0)] : []);

    /// <summary>What a key is of.</summary>
    public enum Sort
    {
        Quantity,
        Related,
        Text,
        Family,
        SpeaksOfAge,
        LimitsAge,
    }

    private void Add(Formula formula, Quantities quantities, int age)
    {
        // A define is one formula, however many speak of it.
        if (!_seen.Add(formula))
        {
            return;
        }

        switch (formula)
        {
            case Opposite opposite:
                Add(opposite.Of, quantities, age);
                break;
            case AtLeast list:
                foreach (var item in list.Items)
                {
                    Add(item, quantities, age);
                }

                break;
            case SingleCondition leaf:
                foreach (var together in leaf.WhenTrue.Alternatives.Concat(leaf.WhenFalse.Alternatives))
                {
                    Add(together, quantities, age);
                }

                break;
            default:
                break;
        }
    }

    private void Add(Together together, Quantities quantities, int age)
    {
        foreach (var bound in together.Bounds)
        {
            _limitsAge |= (bound.X == age && bound.Y == Quantities.Nought) || (bound.Y == age && bound.X == Quantities.Nought);
            Add(bound.X, quantities, age);
            Add(bound.Y, quantities, age);
        }

        foreach (var text in together.Texts)
        {
            _texts.Add(text.Text);
        }
    }

    private void Add(int quantity, Quantities quantities, int age)
    {
        _speaksOfAge |= quantity == age;
        if (quantity == age || quantity == Quantities.Nought || _quantities.Holds(quantity))
        {
            return;
        }

        _quantities.Add(quantity);
        if (quantities.FamilyOf(quantity) is { } family)
        {
            _families.Add(family.Number);
        }

        foreach (var bound in quantities.RelationsOf(quantity))
        {
            _related.Add(bound.X);
            _related.Add(bound.Y);
        }
    }

    /// <summary>A set of small numbers, a bit each.</summary>
    private sealed class Places
    {
        private ulong[] _bits = [];

        public bool Holds(int place) => place / 64 < _bits.Length && (_bits[place / 64] >> (place % 64) & 1) != 0;

        public void Add(int place)
        {
            if (place / 64 >= _bits.Length)
            {
                Array.Resize(ref _bits, place / 64 + 1);
            }

            _bits[place / 64] |= 1UL << (place % 64);
        }

        public IEnumerable<int> All
        {
            get
            {
                for (var i = 0; i < _bits.Length; i++)
                {
                    for (var bits = _bits[i]; bits != 0; bits &= bits - 1)
                    {
                        yield return (64 * i) + BitOperations.TrailingZeroCount(bits);
                    }
                }
            }
        }
    }
}
