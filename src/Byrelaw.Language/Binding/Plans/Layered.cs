namespace Byrelaw.Language.Binding.Plans;

/// <summary>
/// Statements of one sort through the layers: a file's own statement replaces what the files under it say of the same thing,
/// if it gives a reason. Files are added after those they use.
/// </summary>
/// <param name="reason">How such a statement gives its reason, for whoever left it out.</param>
internal sealed class Layered<T>(string reason)
{
    private sealed record Said(string Name, RuleFile File, SourceSpan Span, T Value);

    private readonly Dictionary<string, List<Said>> _byName = new(StringComparer.Ordinal);
    private readonly List<string> _order = [];

    /// <summary>Adds what a file says of a name; tells what is wrong with saying it there.</summary>
    public void Add(string name, RuleFile file, SourceSpan span, bool hasReason, T value) => Add(NameFolding.Fold(name), name, file, span, hasReason, value);

    /// <summary>The same where more than the name tells one from another.</summary>
    public void Add(string key, string name, RuleFile file, SourceSpan span, bool hasReason, T value)
    {
        if (!_byName.TryGetValue(key, out var tips))
        {
            _byName[key] = tips = [];
            _order.Add(key);
        }

        if (tips.Find(tip => tip.File == file) is { } twice)
        {
            file.Problems.Add(PlanProblems.Twice(span, name, twice.Span));
            return;
        }

        var below = tips.FindLast(tip => file.Sees(tip.File));
        if (below is not null && !hasReason)
        {
            file.Problems.Add(PlanProblems.ReplacedWithoutReason(span, name, below.Span, reason));
        }

        tips.RemoveAll(tip => file.Sees(tip.File));
        tips.Add(new Said(name, file, span, value));
    }

    /// <summary>What counts in the end, in the order in which it was first said; tells what two files say that lie side by side.</summary>
    public IEnumerable<T> Resolve()
    {
        foreach (var tips in _order.Select(key => _byName[key]))
        {
            var last = tips[^1];
            if (tips.Count > 1)
            {
                last.File.Problems.Add(PlanProblems.Conflict(last.Span, last.Name, tips[^2].Span));
            }

            yield return last.Value;
        }
    }
}
