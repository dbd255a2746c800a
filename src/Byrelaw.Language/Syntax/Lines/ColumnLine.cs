namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>pregnancy test in "PD", dated in "Scanned"</c>: what a column of a source says.</summary>
/// <param name="What">A column of the landed files, a fact, a kind of record or a detail.</param>
/// <param name="Of">Of a detail: whose; null where only one kind has it.</param>
/// <param name="Heading">The column's heading.</param>
/// <param name="Clauses">What more is said of its cells.</param>
internal sealed record ColumnLine(NameSyntax What, NameSyntax? Of, TextSyntax Heading, ImmutableArray<CellClauseSyntax> Clauses) : BodyLine
{
    /// <summary><c>last calving in "Calved"</c>: after this entry none came. Where the word stands; null where it does not.</summary>
    public SourceSpan? Last { get; init; }
}

/// <summary><c>sex is F</c>: what holds for every row of a source.</summary>
internal sealed record EveryRowLine(NameSyntax What, NameSyntax? Of, NameSyntax Value) : BodyLine;

/// <summary><c>dates day first</c>.</summary>
internal sealed record DateOrderLine(DateOrder Order) : BodyLine
{
    public override string? OnlyOnce => "dates";
}

/// <summary><c>decimal comma</c>.</summary>
internal sealed record DecimalCommaLine : BodyLine
{
    public override string? OnlyOnce => "decimal comma";
}

/// <summary><c>thousands comma</c>, <c>thousands point</c>.</summary>
/// <param name="Sign">What stands between thousands.</param>
internal sealed record ThousandsLine(char Sign) : BodyLine
{
    public override string? OnlyOnce => "thousands";
}

/// <summary><c>short years</c>: 24 is 2024, the latest such year that is not to come.</summary>
internal sealed record ShortYearsLine : BodyLine
{
    public override string? OnlyOnce => "short years";
}

/// <summary><c>leave out rows where "State" is "cancelled"</c>.</summary>
internal sealed record LeaveOutRowsLine(TextSyntax Heading, TextSyntax Cell) : BodyLine;

/// <summary><c>leave out columns "A", "B"</c>.</summary>
internal sealed record LeaveOutColumnsLine(ImmutableArray<TextSyntax> Headings) : BodyLine;

/// <summary><c>- "CU" where "Remark" is "serum" is serum copper, value in "Detail", in umol/L</c>: what a text of the column above means.</summary>
/// <param name="Cell">The whole cell.</param>
/// <param name="WhereHeading">Another column; null for none.</param>
/// <param name="WhereCell">What that one must say.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Clauses">What more is said.</param>
internal sealed record CellLine(
    TextSyntax Cell, TextSyntax? WhereHeading, TextSyntax? WhereCell, CellMeaningSyntax Meaning, ImmutableArray<CellClauseSyntax> Clauses) : BodyLine;
