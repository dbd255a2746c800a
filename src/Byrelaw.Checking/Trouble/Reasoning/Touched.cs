namespace Byrelaw.Checking.Trouble.Reasoning;

/// <summary>
/// The quantities and texts that formulas speak of. Two formulas that share none, and none that are related, have nothing to
/// do with each other, and need not be held against each other.
/// </summary>
internal sealed class Touched
{
    private readonly HashSet<int> _quantities = [];
    private readonly HashSet<int> _texts = [];
    private readonly HashSet<int> _limited = [];

    public static Touched By(params Formula[] formulas)
    {
        var touched = new Touched();
        foreach (var formula in formulas)
        {
            touched.Add(formula);
        }

        return touched;
    }

    /// <summary>Whether the two may have to do with each other.</summary>
    /// <param name="other">The other formulas' quantities.</param>
    /// <param name="quantities">What they are.</param>
    /// <param name="age">Her age: everything that happened to her lies within it, so it counts only where one of the two limits it.</param>
    public bool Meets(Touched other, Quantities quantities, int age) =>
        _texts.Overlaps(other._texts)
        || _quantities.Any(quantity => (quantity != age || _limited.Contains(age) || other._limited.Contains(age))
            && (other._quantities.Contains(quantity) || quantities.RelationsOf(quantity).Any(bound => other.Has(bound.X) || other.Has(bound.Y))))
        || other._quantities.Any(quantity => quantities.RelationsOf(quantity).Any(bound => Has(bound.X) || Has(bound.Y)));

    private bool Has(int quantity) => quantity != Quantities.Nought && _quantities.Contains(quantity);

    private void Add(Formula formula)
    {
        switch (formula)
        {
            case Opposite opposite:
                Add(opposite.Of);
                break;
            case AtLeast list:
                foreach (var item in list.Items)
                {
                    Add(item);
                }

                break;
            case Leaf leaf:
                foreach (var together in leaf.WhenTrue.Alternatives.Concat(leaf.WhenFalse.Alternatives))
                {
                    Add(together);
                }

                break;
            default:
                break;
        }
    }

    private void Add(Together together)
    {
        foreach (var bound in together.Bounds)
        {
            AddQuantity(bound.X);
            AddQuantity(bound.Y);
            if (bound.Y == Quantities.Nought || bound.X == Quantities.Nought)
            {
                _limited.Add(bound.X == Quantities.Nought ? bound.Y : bound.X);
            }
        }

        foreach (var text in together.Texts)
        {
            _texts.Add(text.Text);
        }
    }

    private void AddQuantity(int quantity)
    {
        if (quantity != Quantities.Nought)
        {
            _quantities.Add(quantity);
        }
    }
}
