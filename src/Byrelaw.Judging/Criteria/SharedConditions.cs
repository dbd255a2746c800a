namespace Byrelaw.Judging.Criteria;

/// <summary>One criterion for all conditions that say the same.</summary>
internal sealed class SharedConditions(SaidAlike alike)
{
    private readonly Dictionary<string, SharedCriterion> _byText = new(StringComparer.Ordinal);

    /// <summary>The criterion for a condition.</summary>
    public Criterion Of(Condition condition, Func<Condition, Criterion> compile)
    {
        if (alike.TextOf(condition) is not { } text)
        {
            return compile(condition);
        }

        if (!_byText.TryGetValue(text, out var shared))
        {
            _byText[text] = shared = new SharedCriterion(compile(condition));
        }

        return shared;
    }
}
