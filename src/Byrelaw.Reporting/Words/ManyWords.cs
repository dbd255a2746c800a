namespace Byrelaw.Reporting.Words;

/// <summary>Entries of a kind, counted.</summary>
public static class ManyWords
{
    // Words that take no plain s.
    private static readonly string[] Odd = [" in", " out", " off", "s", "x", "ch", "sh", "y"];

    /// <summary><c>calvings</c>, <c>pregnant scans</c>, <c>entries of bull in</c>.</summary>
    public static string Of(string kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Odd.Any(end => kind.EndsWith(end, StringComparison.Ordinal)) ? $"entries of {kind}" : $"{kind}s";
    }

    /// <summary>The same of what a count counts: <c>2 pregnancy tests that say pregnant</c>.</summary>
    public static string Count(int count, Counted what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return Count(count, what.Kind.Name) + Saying(what, count == 1 ? "says" : "say");
    }

    /// <summary><c>calvings</c>, <c>pregnancy tests that say pregnant</c>.</summary>
    public static string Of(Counted what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return Of(what.Kind.Name) + Saying(what, "say");
    }

    /// <summary><c>a calving</c>, <c>a pregnancy test that says pregnant</c>.</summary>
    public static string One(Counted what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return Article.With(what.Kind.Name) + Saying(what, "says");
    }

    private static string Saying(Counted what, string says) =>
        what.Kind is TestKind test && what.Answer >= 0 ? $" that {says} {test.Answers[what.Answer]}" : "";

    /// <summary><c>1 calving</c>, <c>3 calvings</c>, <c>1 entry of bull in</c>.</summary>
    public static string Count(int count, string kind)
    {
        var many = Of(kind);
        return Numbers.Count(count, many == $"entries of {kind}" ? $"entry of {kind}" : kind, many);
    }
}
