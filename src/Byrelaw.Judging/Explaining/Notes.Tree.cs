using System.Runtime.InteropServices;

namespace Byrelaw.Judging.Explaining;

/// <summary>The part of the notes that follows lists, names and "not", so as to tell which findings decide.</summary>
internal sealed partial class Notes
{
    private readonly List<Finding> _findings = [];
    private readonly List<TreeNode> _nodes = [];
    private readonly List<string> _through = [];
    private readonly Dictionary<string, Ways> _entered = new(StringComparer.Ordinal);
    private bool _isInverted;

    /// <summary>All findings so far; those that do not bear on the answer say so.</summary>
    public ImmutableArray<Finding> Findings => [.. _findings];

    /// <summary>Whether what stands against the answer wanted is there for good.</summary>
    public bool IsForGood => _nodes.Count > 0 && _nodes[^1].IsForGood;

    /// <summary>By which records it may come to be known as wanted; none where that is not told.</summary>
    public Ways WaysToSettle => _nodes.Count > 0 ? _nodes[^1].Ways : Ways.None;

    /// <summary>An answer without findings of its own.</summary>
    public void Node(Truth truth, bool isForGood) => Node(truth, isForGood, _findings.Count, Ways.None);

    /// <summary>The answer of a defined name whose findings are noted already.</summary>
    public void Again(string define, Truth truth) => Node(truth, isForGood: false, _findings.Count, _entered.GetValueOrDefault(define, Ways.None));

    /// <summary>Goes into a defined name; false where its findings are already noted.</summary>
    public bool Enter(string define)
    {
        if (!_entered.TryAdd(define, Ways.None))
        {
            return false;
        }

        _through.Add(define);
        return true;
    }

    public void Leave()
    {
        _entered[_through[^1]] = WaysToSettle;
        _through.RemoveAt(_through.Count - 1);
    }

    public void BeginNot() => _isInverted = !_isInverted;

    public void CloseNot()
    {
        _isInverted = !_isInverted;
        _nodes[^1] = _nodes[^1] with { Truth = (Truth)(Truth.True - _nodes[^1].Truth) };
    }

    public int BeginList() => _nodes.Count;

    /// <summary>
    /// Ends a list. A finding decides where its branch has the list's own answer all the way up: turning
    /// a branch that differs would not turn the list.
    /// </summary>
    public void CloseList(int list, Truth truth, int atLeast)
    {
        var unwanted = _isInverted ? Truth.True : Truth.False;
        var branches = _nodes.Count - list;
        var stuck = 0;
        var first = _findings.Count;
        for (var i = list; i < _nodes.Count; i++)
        {
            var node = _nodes[i];
            first = Math.Min(first, node.First);
            stuck += node.IsForGood && node.Truth == unwanted ? 1 : 0;
            if (node.Truth != truth)
            {
                var end = i + 1 < _nodes.Count ? _nodes[i + 1].First : _findings.Count;
                for (var f = node.First; f < end; f++)
                {
                    _findings[f] = _findings[f] with { Decides = false };
                }
            }
        }

        var ways = truth == Truth.Unknown ? WaysOf(list, atLeast) : Ways.None;
        _nodes.RemoveRange(list, branches);
        var isForGood = truth == unwanted && (_isInverted ? stuck >= atLeast : branches - stuck < atLeast);
        Node(truth, isForGood, first, ways);
    }

    /// <summary>Of a list that is not known: how many of its open branches are still to turn as wanted.</summary>
    private Ways WaysOf(int list, int atLeast)
    {
        var branches = CollectionsMarshal.AsSpan(_nodes)[list..];
        var (open, settled) = (new List<Ways>(), 0);
        foreach (var node in branches)
        {
            if (node.Truth == Truth.Unknown)
            {
                open.Add(node.Ways);
            }
            else
            {
                settled += (node.Truth == Truth.True) != _isInverted ? 1 : 0;
            }
        }

        return Ways.Together(open, (_isInverted ? branches.Length - atLeast + 1 : atLeast) - settled);
    }

    private void Node(Truth truth, bool isForGood, int first, Ways ways) => _nodes.Add(new TreeNode(truth, isForGood, first, ways));

    /// <param name="Truth">The branch's answer.</param>
    /// <param name="IsForGood">Nothing that can still happen turns it to what is wanted.</param>
    /// <param name="First">The place of its first finding.</param>
    /// <param name="Ways">Of one that is not known: by which records it may turn as wanted.</param>
    private readonly record struct TreeNode(Truth Truth, bool IsForGood, int First, Ways Ways);
}
