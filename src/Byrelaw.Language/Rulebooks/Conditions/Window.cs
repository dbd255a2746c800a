namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>Which days a condition looks at; with d the day of judging and e the event's day.
/// No window holds days after d.</summary>
public abstract record Window
{
    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>The same window with others in the place of its parts; null where it cannot be said with those.</summary>
    /// <param name="others">What is to stand there.</param>
    /// <param name="part">What a length of it is among the numbers of its condition.</param>
    internal abstract Window? With(OtherParts others, NumberPart part);
}

/// <summary><c>in the last N days</c>: e + N is not before d.</summary>
public sealed record InTheLast(TimeLength Length) : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => this with { Length = others.Length(Length, part) };
}

/// <summary><c>at least N days ago</c>: e + N is not after d.</summary>
public sealed record AtLeastAgo(TimeLength Near) : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => this with { Near = others.Length(Near, part) };
}

/// <summary><c>between N and M days ago</c>: e + N is not after d and e + M is not before d.</summary>
public sealed record BetweenAgo(TimeLength Near, TimeLength Far) : Window
{
    internal override Window? With(OtherParts others, NumberPart part)
    {
        var (near, far) = others.Lengths(Near, Far, part);
        return this with { Near = near, Far = far };
    }
}

/// <summary><c>in the N days before collection</c>: e is not after the date, and e + N is not before it.</summary>
public sealed record BeforeDate(TimeLength Length, DateReference Date) : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => this with { Length = others.Length(Length, part), Date = others.Date(Date) };
}

/// <summary><c>since last calving</c>: from her latest of these; other kinds of that day count, these do not.</summary>
public sealed record SinceLast(ImmutableArray<Kind> Kinds) : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => others.Kinds(Kinds) is { } kinds ? this with { Kinds = kinds } : null;
}

/// <summary><c>from N days after last calving</c>: e is not before her latest of these + N.</summary>
public sealed record FromAfterLast(TimeLength Wait, ImmutableArray<Kind> Kinds) : Window
{
    /// <summary><c>from day 28 of last transfer</c>: the days are those of the embryo, so its age on the day of transfer is taken off.
    /// Of an embryo whose age is not known, as now of all, nothing is.</summary>
    public bool IsDayOf { get; init; }

    internal override Window? With(OtherParts others, NumberPart part)
    {
        var wait = others.Length(Wait, part);
        return others.Kinds(Kinds) is { } kinds ? this with { Wait = wait, Kinds = kinds } : null;
    }
}

/// <summary><c>from 35 days after last running with bull</c>: e is not before the last day of her last such spell + N. While it
/// runs there is no such day.</summary>
public sealed record FromAfterSpell(TimeLength Wait, Spell Spell) : Window
{
    internal override Window? With(OtherParts others, NumberPart part)
    {
        var wait = others.Length(Wait, part);
        return others.Spell(Spell) is { } spell ? this with { Wait = wait, Spell = spell } : null;
    }
}

/// <summary><c>before first transfer</c>, <c>before last calving</c>: e is before that day.</summary>
public sealed record BeforeDay(WindowDay Day) : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => Day.With(others) is { } day ? this with { Day = day } : null;
}

/// <summary><c>in the 21 days after last calving</c>: e is on that day or later, and not after that day + N.</summary>
public sealed record DaysAfter(TimeLength Length, WindowDay Day) : Window
{
    internal override Window? With(OtherParts others, NumberPart part)
    {
        var length = others.Length(Length, part);
        return Day.With(others) is { } day ? this with { Length = length, Day = day } : null;
    }
}

/// <summary><c>since 2026-06-01</c>: from that day, or from a date of the programme.</summary>
public sealed record SinceDate(DateReference Date) : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => this with { Date = others.Date(Date) };
}

/// <summary><c>since birth</c>.</summary>
public sealed record SinceBirth : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => this;
}

/// <summary><c>ever</c>.</summary>
public sealed record Ever : Window
{
    internal override Window? With(OtherParts others, NumberPart part) => this;
}

/// <summary>A day that a rule names: a date as written, or one of the programme's dates.</summary>
/// <param name="Name">The programme's name for it; null for a date as written.</param>
/// <param name="Value">The day; null where a rule file is read without a programme that has this date.</param>
public sealed record DateReference(string? Name, LocalDate? Value);

/// <summary>The day that a window ends before or begins on: a date, or the day of her last of some events; her birth where she never had one.</summary>
/// <param name="Date">The date; null where it is the day of an event.</param>
/// <param name="Last">The kinds; none where it is a date.</param>
public sealed record WindowDay(DateReference? Date, ImmutableArray<Kind> Last)
{
    internal WindowDay? With(OtherParts others) =>
        Date is { } date ? this with { Date = others.Date(date) } : others.Kinds(Last) is { } last ? this with { Last = last } : null;
}
