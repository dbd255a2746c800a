namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>up to 2026-09-20</c>.</summary>
internal sealed record UpToLine(DateSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "up to";
}

/// <summary>A line of <c>records</c> that has a reason of its own: <c>because</c> and <c>agreed by</c> below it belong to it.</summary>
internal abstract record ReasonedLine : BodyLine;

/// <summary>A promise about kinds of record.</summary>
internal abstract record PromiseLine(ImmutableArray<NameSyntax> Kinds, DateSyntax? Since) : ReasonedLine;

/// <summary><c>same animal "301", "1301"</c> or <c>not the same animal "301", "1301"</c>.</summary>
/// <param name="Animals">The farm's own numbers.</param>
/// <param name="AreOne">Whether they are one animal's.</param>
internal sealed record SameAnimalLine(ImmutableArray<TextSyntax> Animals, bool AreOne) : ReasonedLine;

/// <summary><c>complete for calving, heat since 2024-06-01 until 2026-07-31</c>.</summary>
internal sealed record CompleteForLine(ImmutableArray<NameSyntax> Kinds, DateSyntax From, DateSyntax? Until) : PromiseLine(Kinds, From);

/// <summary><c>no bull in, transfer on this farm since 2019-01-01</c>: complete, and there is none.</summary>
internal sealed record NoneOnFarmLine(ImmutableArray<NameSyntax> Kinds, DateSyntax? Since) : PromiseLine(Kinds, Since);

/// <summary><c>leave out foot trim</c>, <c>leave out AI, which is not mating</c>.</summary>
/// <param name="Names">Words of the records that nobody declares.</param>
/// <param name="IsNot">What a person says that they are not, where a hint says they may be; null where nobody says so.</param>
internal sealed record LeaveOutLine(ImmutableArray<NameSyntax> Names, NameSyntax? IsNot) : BodyLine;

/// <summary><c>method is ultrasound</c>, <c>method of pregnancy test is ultrasound</c>: what a blank cell of the records means.</summary>
/// <param name="Detail">The detail.</param>
/// <param name="Kind">Whose; null for the one kind whose detail can be that.</param>
/// <param name="Value">One of its values.</param>
internal sealed record BlankOfLine(NameSyntax Detail, NameSyntax? Kind, NameSyntax Value) : BodyLine;

/// <summary><c>collection on 2026-10-12</c>, <c>collection on a visit between A and B, 3 times every 14 days</c>.</summary>
/// <param name="Days">As written; empty for a visit still to be chosen.</param>
/// <param name="Between">The days between which the visit is to be; null where days are written.</param>
/// <param name="Times">How many in all; null for as many as are written.</param>
/// <param name="Every">How far apart.</param>
internal sealed record CollectionLine(
    ImmutableArray<DateSyntax> Days, (DateSyntax From, DateSyntax To)? Between, NumberSyntax? Times, DurationSyntax? Every) : BodyLine
{
    public override string? OnlyOnce => "collection";
}

/// <summary><c>transfer 8 days after collection, over 2 days</c>, <c>transfer on 2026-10-20</c> or <c>transfer on collection</c>.</summary>
internal sealed record TransferLine(DayReferenceSyntax First, DurationSyntax? Over) : BodyLine
{
    public override string? OnlyOnce => "transfer";
}

/// <summary><c>date planned start of mating on 2026-10-26</c> or <c>date first treatment 8 days before collection</c>.</summary>
internal sealed record DateLine(NameSyntax Name, DayReferenceSyntax Day) : BodyLine;

/// <summary><c>choose donors from "1021", judged on collection</c>.</summary>
/// <param name="List">Which list.</param>
/// <param name="Animals">Named animals; empty where <paramref name="From"/> is given.</param>
/// <param name="From"><c>females</c>, <c>cows</c>, <c>heifers</c> or another list.</param>
/// <param name="First">The first judging day.</param>
/// <param name="Last">The last; null for a single day.</param>
/// <param name="Use">What is said of its use; null where nothing is.</param>
internal sealed record ChooseLine(
    NameSyntax List, ImmutableArray<TextSyntax> Animals, NameSyntax? From,
    Conditions.DateReferenceSyntax First, Conditions.DateReferenceSyntax? Last, ListUseSyntax? Use) : BodyLine;

/// <summary><c>nothing given</c> or <c>for looking only</c>.</summary>
internal sealed record ListUseSyntax(ListUse Use) : SyntaxNode;
