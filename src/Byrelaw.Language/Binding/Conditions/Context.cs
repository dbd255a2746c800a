namespace Byrelaw.Language.Binding.Conditions;

/// <summary>What binding a condition needs to know, and where its problems go.</summary>
internal sealed record Context(Namespace Names, List<Diagnostic> Problems)
{
    /// <summary>Adds a problem; the result says that nothing could be bound.</summary>
    public T? Fail<T>(Diagnostic problem) where T : class
    {
        Problems.Add(problem);
        return null;
    }

    /// <summary>Adds a problem; the result says that nothing could be bound.</summary>
    public T? None<T>(Diagnostic problem) where T : struct
    {
        Problems.Add(problem);
        return null;
    }
}
