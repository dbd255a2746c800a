namespace Byrelaw.Language.Syntax.Conditions;

/// <summary>Which days a condition looks at, as written.</summary>
internal abstract record WindowSyntax : TailSyntax;

/// <summary><c>in the last 45 days</c>.</summary>
internal sealed record InTheLastSyntax(DurationSyntax Length) : WindowSyntax;

/// <summary><c>at least 28 days ago</c>.</summary>
internal sealed record AgoSyntax(CompareSyntax Compare) : WindowSyntax;

/// <summary><c>in the 60 days before collection</c>.</summary>
internal sealed record BeforeDateSyntax(DurationSyntax Length, DateReferenceSyntax Date) : WindowSyntax;

/// <summary><c>since last calving or abortion</c>.</summary>
internal sealed record SinceLastSyntax(ImmutableArray<NameSyntax> Kinds) : WindowSyntax;

/// <summary><c>from 21 days after last calving</c>.</summary>
internal sealed record FromAfterLastSyntax(DurationSyntax Wait, ImmutableArray<NameSyntax> Kinds) : WindowSyntax
{
    /// <summary>Whether it is written <c>from day 28 of last transfer</c>.</summary>
    public bool IsDayOf { get; init; }
}

/// <summary><c>since 2026-06-01</c>, <c>since collection</c>, <c>since birth</c>.</summary>
internal sealed record SinceDateSyntax(DateReferenceSyntax Date) : WindowSyntax;

/// <summary><c>ever</c>.</summary>
internal sealed record EverSyntax : WindowSyntax;

/// <summary>A day, or the name of one.</summary>
internal sealed record DateReferenceSyntax(DateSyntax? Date, NameSyntax? Name) : SyntaxNode;

/// <summary><c>before first transfer</c>, <c>before last calving</c>.</summary>
internal sealed record BeforeDaySyntax(WindowDaySyntax Day) : WindowSyntax;

/// <summary><c>in the 21 days after last calving</c>.</summary>
internal sealed record DaysAfterSyntax(DurationSyntax Length, WindowDaySyntax Day) : WindowSyntax;

/// <summary>A date, the name of one, or the last of some events.</summary>
/// <param name="Date">A date as written; null for names.</param>
/// <param name="Names">The names; none for a date.</param>
/// <param name="IsLast">Whether <c>last</c> stands before them.</param>
internal sealed record WindowDaySyntax(DateSyntax? Date, ImmutableArray<NameSyntax> Names, bool IsLast) : SyntaxNode;
