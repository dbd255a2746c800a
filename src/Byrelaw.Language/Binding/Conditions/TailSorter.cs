namespace Byrelaw.Language.Binding.Conditions;

/// <summary>
/// Sorts what follows a condition's subject. A part is taken by whoever has a use for it; what
/// nobody took has no place there.
/// </summary>
internal sealed class TailSorter(Context context, ConditionSyntax condition, string name)
{
    private readonly List<TailSyntax> _left = [.. condition.Tails.Where(tail => tail is not WindowSyntax)];
    private bool _windowsTaken;

    /// <summary>The windows, in the order of writing.</summary>
    public IEnumerable<WindowSyntax> Windows
    {
        get
        {
            _windowsTaken = true;
            return condition.Tails.OfType<WindowSyntax>();
        }
    }

    /// <summary>The subject's name.</summary>
    public string Name => name;

    /// <summary>The whole condition's place.</summary>
    public SourceSpan Span => condition.Span;

    /// <summary>The first part of a kind; null where there is none.</summary>
    public T? Take<T>() where T : TailSyntax
    {
        var at = _left.FindIndex(tail => tail is T);
        if (at < 0)
        {
            return null;
        }

        var found = (T)_left[at];
        _left.RemoveAt(at);
        return found;
    }

    /// <summary>Says what has no place; true where everything has.</summary>
    public bool Finish(bool demandFound)
    {
        foreach (var tail in _left)
        {
            context.Problems.Add(demandFound && tail is CompareSyntax or IsSyntax or RecordedSyntax or TopSyntax
                ? ConditionProblems.SecondDemand(tail.Span)
                : ConditionProblems.NoPlaceHere(tail.Span, name));
        }

        if (!_windowsTaken && condition.Tails.FirstOrDefault(tail => tail is WindowSyntax) is { } window)
        {
            context.Problems.Add(ConditionProblems.NoPlaceHere(window.Span, name));
            return false;
        }

        return _left.Count == 0;
    }
}
