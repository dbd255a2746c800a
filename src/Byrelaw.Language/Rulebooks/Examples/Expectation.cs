namespace Byrelaw.Language.Rulebooks.Examples;

/// <summary>What an example expects of one rule, preference, defined condition or list.</summary>
/// <param name="Of">Which of them.</param>
/// <param name="Name">Its name, declared spelling.</param>
/// <param name="Answer">One that fits <paramref name="Of"/>.</param>
/// <param name="Span">Where.</param>
public sealed record Expectation(ExpectationOf Of, string Name, ExpectedAnswer Answer, SourceSpan Span)
{
    /// <summary>The first day of the stretch with this answer that holds the judged day (of a list: from when she is ready); null where nothing is expected of it.</summary>
    public LocalDate? From { get; init; }

    /// <summary>The first day with another answer; null where nothing is expected of it.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Of a list's Later: the first later day on which no rule fails, and she is still to be asked about; null where nothing is expected of it.</summary>
    public LocalDate? NotBefore { get; init; }

    /// <summary>Kinds, facts and defined conditions that the answer rests on; of a list: rules that stand in the way. Empty where nothing is expected of it.</summary>
    public ImmutableArray<string> BecauseOf { get; init; } = [];

    /// <summary>Exactly the kinds and facts whose records would settle it; empty where nothing is expected of it.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];
}

/// <summary>What something is expected of.</summary>
public enum ExpectationOf
{
    /// <summary>A rule.</summary>
    Rule,

    /// <summary>A preference.</summary>
    Prefer,

    /// <summary>A defined condition.</summary>
    Define,

    /// <summary>A whole list.</summary>
    List,
}

/// <summary>An answer that an example expects.</summary>
public enum ExpectedAnswer
{
    /// <summary><c>met</c>, of a rule or a preference.</summary>
    Met,

    /// <summary><c>not met</c>, of a rule or a preference.</summary>
    NotMet,

    /// <summary><c>not known</c>, of anything but a list.</summary>
    NotKnown,

    /// <summary><c>does not apply</c>, of a rule.</summary>
    DoesNotApply,

    /// <summary><c>true</c>, of a defined condition.</summary>
    True,

    /// <summary><c>false</c>, of a defined condition.</summary>
    False,

    /// <summary><c>ready</c>, of a list.</summary>
    Ready,

    /// <summary><c>on course</c>, of a list.</summary>
    OnCourse,

    /// <summary><c>later</c>, of a list.</summary>
    Later,

    /// <summary><c>ask</c>, of a list.</summary>
    Ask,

    /// <summary><c>no</c>, of a list.</summary>
    No,
}
