namespace Byrelaw.Judging.Explaining;

/// <summary>The part of the notes that follows lists, names and "not", so as to tell which findings decide.</summary>
internal sealed partial class Notes
{
    private readonly List<Finding> _findings = [];
    private readonly List<TreeNode> _nodes = [];
    private readonly List<string> _through = [];
    private readonly HashSet<string> _entered = new(StringComparer.Ordinal);
    private bool _isInverted;

    /// <summary>All findings so far; those that do not bear on the answer say so.</summary>
    public ImmutableArray<Finding> Findings => [.. _findings];

    /// <summary>Whether what stands against the answer wanted is there for good.</summary>
    public bool IsForGood => _nodes.Count > 0 && _nodes[^1].IsForGood;

    /// <summary>An answer without findings of its own.</summary>
    public void Node(Truth truth, bool isForGood) => Node(truth, isForGood, _findings.Count);

    /// <summary>Goes into a defined name; false where its findings are already noted.</summary>
    public bool Enter(string define)
    {
        if (!_entered.Add(define))
        {
            return false;
        }

        _through.Add(define);
        return true;
    }

    public void Leave() => _through.RemoveAt(_through.Count - 1);

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

        _nodes.RemoveRange(list, branches);
        var isForGood = truth == unwanted && (_isInverted ? stuck >= atLeast : branches - stuck < atLeast);
        Node(truth, isForGood, first);
    }

    private void Node(Truth truth, bool isForGood, int first) => _nodes.Add(new TreeNode(truth, isForGood, first));

    /// <param name="Truth">The branch's answer.</param>
    /// <param name="IsForGood">Nothing that can still happen turns it to what is wanted.</param>
    /// <param name="First">The place of its first finding.</param>
    private readonly record struct TreeNode(Truth Truth, bool IsForGood, int First);
}
