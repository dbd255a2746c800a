namespace Byrelaw.Language.Syntax;

/// <summary>What the text of a cell means.</summary>
internal abstract record CellMeaningSyntax : SyntaxNode;

/// <summary>A kind, an answer, a value; <c>blank</c>, <c>pending</c> and <c>left out</c> too.</summary>
internal sealed record CellNameSyntax(NameSyntax Name) : CellMeaningSyntax;

/// <summary><c>less than 3</c>, <c>more than 10</c>.</summary>
internal sealed record CellLimitSyntax(bool IsLess, NumberSyntax Limit) : CellMeaningSyntax;

/// <summary>What is said of a column or of a text in it, behind a comma.</summary>
internal abstract record CellClauseSyntax : SyntaxNode;

/// <summary><c>in umol/L</c>.</summary>
internal sealed record InUnitSyntax(UnitSyntax Unit) : CellClauseSyntax;

/// <summary><c>times 0.1</c>.</summary>
internal sealed record TimesSyntax(NumberSyntax Factor) : CellClauseSyntax;

/// <summary><c>dated in "Scanned"</c> or <c>dated 2026-09-30</c>.</summary>
internal sealed record DatedSyntax(TextSyntax? Heading, DateSyntax? Day) : CellClauseSyntax;

/// <summary><c>by official identity</c>: what an animal is found by.</summary>
internal sealed record FoundBySyntax(NameSyntax Fact) : CellClauseSyntax;

/// <summary><c>as at 2026-09-30</c>.</summary>
internal sealed record CellAsAtSyntax(DateSyntax Day) : CellClauseSyntax;

/// <summary><c>blank is never</c>, <c>blank is none since last calving</c>.</summary>
/// <param name="SinceLast">The kind behind <c>last</c>; null for never.</param>
internal sealed record BlankIsSyntax(NameSyntax? SinceLast) : CellClauseSyntax;

/// <summary><c>value in "Detail"</c>, <c>method is inseminated</c>, or an answer by itself.</summary>
/// <param name="What">A column of the landed files, a detail, or the answer.</param>
/// <param name="Heading">Where it stands; null where it does not stand in a column.</param>
/// <param name="Value">What it is; null where it stands in a column, or is an answer.</param>
internal sealed record CellPartSyntax(NameSyntax What, TextSyntax? Heading, NameSyntax? Value) : CellClauseSyntax;
