using System.Runtime.InteropServices;

namespace Byrelaw.Judging.Explaining;

/// <summary>The part of the notes that follows lists, names and "not", so as to tell which findings decide.</summary>
internal sealed partial class Notes
{
    private readonly List<Finding> _findings = [];
    private readonly List<TreeNode> _nodes = [];
    private readonly List<string> _through = [];
    private readonly Dictionary<string, (Enough<Missing> Settling, Enough<Remedy> Turning)> _entered = new(StringComparer.Ordinal);
    private bool _isInverted;

    /// <summary>All findings so far; those that do not bear on the answer say so.</summary>
    public ImmutableArray<Finding> Findings => [.. _findings];

    /// <summary>Whether what stands against the answer wanted is there for good.</summary>
    public bool IsForGood => _nodes.Count > 0 && _nodes[^1].IsForGood;

    /// <summary>Of what is not known: by which records it may come to be known as wanted; none where that is not told.</summary>
    public Enough<Missing> WaysToSettle => _nodes.Count > 0 ? _nodes[^1].Settling : Enough<Missing>.None;

    /// <summary>Of what stands against the answer wanted: what would turn it; none where that is not told.</summary>
    public Enough<Remedy> WaysToTurn => _nodes.Count > 0 ? _nodes[^1].Turning : Enough<Remedy>.None;

    /// <summary>An answer without findings of its own.</summary>
    public void Node(Truth truth, bool isForGood) => _nodes.Add(new TreeNode(truth, isForGood, _findings.Count, Enough<Missing>.None, Enough<Remedy>.None));

    /// <summary>The answer of a defined name whose findings are noted already.</summary>
    public void Again(string define, Truth truth) => _nodes.Add(new TreeNode(truth, false, _findings.Count, _entered[define].Settling, _entered[define].Turning));

    /// <summary>Goes into a defined name; false where its findings are already noted.</summary>
    public bool Enter(string define)
    {
        if (!_entered.TryAdd(define, (Enough<Missing>.None, Enough<Remedy>.None)))
        {
            return false;
        }

        _through.Add(define);
        return true;
    }

    public void Leave()
    {
        _entered[_through[^1]] = (WaysToSettle, WaysToTurn);
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

        var settling = truth == Truth.Unknown ? Together(list, atLeast, Truth.Unknown, node => node.Settling) : Enough<Missing>.None;
        var turning = truth == unwanted ? Together(list, atLeast, unwanted, node => node.Turning) : Enough<Remedy>.None;
        _nodes.RemoveRange(list, branches);
        var isForGood = truth == unwanted && (_isInverted ? stuck >= atLeast : branches - stuck < atLeast);
        _nodes.Add(new TreeNode(truth, isForGood, first, settling, turning));
    }

    /// <summary>The ways of those branches of a list that are to turn; the others are as wanted, or are taken to come out so.</summary>
    private Enough<T> Together<T>(int list, int atLeast, Truth toTurn, Func<TreeNode, Enough<T>> of)
    {
        var (branches, unwanted) = (new List<Enough<T>>(), _isInverted ? Truth.True : Truth.False);
        var others = 0;
        foreach (var node in CollectionsMarshal.AsSpan(_nodes)[list..])
        {
            if (node.Truth == toTurn)
            {
                branches.Add(of(node));
            }
            else
            {
                others += node.Truth == unwanted ? 0 : 1;
            }
        }

        return Enough<T>.Together(branches, (_isInverted ? _nodes.Count - list - atLeast + 1 : atLeast) - others);
    }

    /// <param name="Truth">The branch's answer.</param>
    /// <param name="IsForGood">Nothing that can still happen turns it to what is wanted.</param>
    /// <param name="First">The place of its first finding.</param>
    /// <param name="Settling">Of one that is not known: by which records it may come to be known as wanted.</param>
    /// <param name="Turning">Of one that is not as wanted: what would turn it.</param>
    private readonly record struct TreeNode(Truth Truth, bool IsForGood, int First, Enough<Missing> Settling, Enough<Remedy> Turning);
}
