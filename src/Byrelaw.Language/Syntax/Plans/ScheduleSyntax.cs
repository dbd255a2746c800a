namespace Byrelaw.Language.Syntax.Plans;

/// <summary>When a team comes.</summary>
internal abstract record ScheduleSyntax : SyntaxNode;

/// <summary><c>every 14 days from 2026-07-06 to 2026-12-18</c>.</summary>
internal sealed record EverySyntax(DurationSyntax Every, DateSyntax From, DateSyntax To) : ScheduleSyntax;

/// <summary><c>on 2026-10-12, 2026-10-26</c>.</summary>
internal sealed record OnDatesSyntax(ImmutableArray<DateSyntax> Dates) : ScheduleSyntax;

/// <summary><c>8 days after "collection"</c>.</summary>
internal sealed record AfterVisitsSyntax(DurationSyntax Wait, TextSyntax Name) : ScheduleSyntax;

/// <summary>A day as a statement names it.</summary>
/// <param name="Date">As written; null for one reckoned from another.</param>
/// <param name="Wait">How long from that one; null for that day itself.</param>
/// <param name="IsBefore">Before it, or after.</param>
/// <param name="Name">Its name.</param>
internal sealed record DayReferenceSyntax(DateSyntax? Date, DurationSyntax? Wait, bool IsBefore, NameSyntax? Name) : SyntaxNode;

/// <summary>A day off: a date, a weekday's name, or <c>holidays</c>.</summary>
internal sealed record DayOffSyntax(DateSyntax? Date, NameSyntax? Word) : SyntaxNode;
