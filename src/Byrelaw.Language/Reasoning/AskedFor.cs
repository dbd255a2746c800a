namespace Byrelaw.Language.Reasoning;

/// <summary>What is asked for on one way of a search already. A define is one formula, however many speak of it, and is asked for once.</summary>
internal sealed class AskedFor
{
    private readonly HashSet<(Formula, bool)> _asked = new(Asked.Instance);
    private readonly List<(Formula, bool)> _inOrder = [];

    /// <summary>How many.</summary>
    public int Count => _inOrder.Count;

    /// <summary>Adds one; false where it has been asked for.</summary>
    public bool Add(Formula formula, bool holds)
    {
        if (!_asked.Add((formula, holds)))
        {
            return false;
        }

        _inOrder.Add((formula, holds));
        return true;
    }

    /// <summary>Whether one has been asked for.</summary>
    public bool Has(Formula formula, bool holds) => _asked.Contains((formula, holds));

    /// <summary>Forgets all but the first so many.</summary>
    public void GoBack(int count)
    {
        for (var i = count; i < _inOrder.Count; i++)
        {
            _asked.Remove(_inOrder[i]);
        }

        _inOrder.RemoveRange(count, _inOrder.Count - count);
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
}
