namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Which days a condition looks at; with d the day of judging and e the event's day.
/// No window holds days after d.</summary>
public abstract record Window
{
    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }
}

/// <summary><c>in the last N days</c>: e + N is not before d.</summary>
public sealed record InTheLast(TimeLength Length) : Window;

/// <summary><c>at least N days ago</c>: e + N is not after d.</summary>
public sealed record AtLeastAgo(TimeLength Near) : Window;

/// <summary><c>between N and M days ago</c>: e + N is not after d and e + M is not before d.</summary>
public sealed record BetweenAgo(TimeLength Near, TimeLength Far) : Window;

/// <summary><c>in the N days before collection</c>: e is not after the date, and e + N is not before it.</summary>
public sealed record BeforeDate(TimeLength Length, DateReference Date) : Window;

/// <summary><c>since last calving</c>: from her latest of these; other kinds of that day count, these do not.</summary>
public sealed record SinceLast(ImmutableArray<Kind> Kinds) : Window;

/// <summary><c>from N days after last calving</c>: e is not before her latest of these + N.</summary>
public sealed record FromAfterLast(TimeLength Wait, ImmutableArray<Kind> Kinds) : Window;

/// <summary><c>since 2026-06-01</c>: from that day, or from a date of the programme.</summary>
public sealed record SinceDate(DateReference Date) : Window;

/// <summary><c>since birth</c>.</summary>
public sealed record SinceBirth : Window;

/// <summary><c>ever</c>.</summary>
public sealed record Ever : Window;

/// <summary>A day that a rule names: a date as written, or one of the programme's dates.</summary>
/// <param name="Name">The programme's name for it; null for a date as written.</param>
/// <param name="Value">The day; null where a rule file is read without a programme that has this date.</param>
public sealed record DateReference(string? Name, LocalDate? Value);
