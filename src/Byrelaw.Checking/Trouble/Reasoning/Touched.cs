namespace Byrelaw.Checking.Trouble.Reasoning;

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

    /// <summary>Whether the two may have to do with each other.</summary>
    public bool Meets(Touched other) =>
        _quantities.Meets(other._quantities) || _quantities.Meets(other._related) || _related.Meets(other._quantities) || _texts.Meets(other._texts)
        || _families.Meets(other._families)
        || (_speaksOfAge && other._limitsAge) || (_limitsAge && other._speaksOfAge);

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

        public bool Meets(Places other)
        {
            for (var i = Math.Min(_bits.Length, other._bits.Length) - 1; i >= 0; i--)
            {
                if ((_bits[i] & other._bits[i]) != 0)
                {
                    return true;
                }
            }

            return false;
        }
    }
}
