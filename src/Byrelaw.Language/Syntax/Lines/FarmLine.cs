using System.Collections.Immutable;

namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>up to 2026-09-20</c>.</summary>
internal sealed record UpToLine(DateSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "up to";
}

/// <summary><c>complete for calving, heat since 2024-06-01</c>.</summary>
internal sealed record CompleteForLine(ImmutableArray<NameSyntax> Kinds, DateSyntax Since) : BodyLine;

/// <summary><c>leave out foot trim</c>.</summary>
internal sealed record LeaveOutLine(ImmutableArray<NameSyntax> Names) : BodyLine;

/// <summary><c>collection on 2026-10-12</c>.</summary>
internal sealed record CollectionLine(DateSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "collection";
}

/// <summary><c>transfer 8 days after collection, over 2 days</c> or <c>transfer on 2026-10-20</c>.</summary>
internal sealed record TransferLine(DateSyntax? Day, DurationSyntax? Wait, NameSyntax? After, DurationSyntax? Over) : BodyLine
{
    public override string? OnlyOnce => "transfer";
}

/// <summary><c>date planned start of mating on 2026-10-26</c>.</summary>
internal sealed record DateLine(NameSyntax Name, DateSyntax Day) : BodyLine;

/// <summary><c>choose donors from "1021", judged on collection</c>.</summary>
/// <param name="List">Which list.</param>
/// <param name="Animals">Named animals; empty where <paramref name="From"/> is given.</param>
/// <param name="From"><c>females</c>, <c>cows</c>, <c>heifers</c> or another list.</param>
/// <param name="First">The first judging day.</param>
/// <param name="Last">The last; null for a single day.</param>
internal sealed record ChooseLine(
    NameSyntax List, ImmutableArray<TextSyntax> Animals, NameSyntax? From,
    Conditions.DateReferenceSyntax First, Conditions.DateReferenceSyntax? Last) : BodyLine;
