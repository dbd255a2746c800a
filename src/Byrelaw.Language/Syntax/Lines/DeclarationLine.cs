namespace Byrelaw.Language.Syntax.Lines;

/// <summary>What a declaration declares.</summary>
internal enum DeclarationKind
{
    Event,
    Measure,
    Test,
    Fact,
}

/// <summary><c>event heat also heats, bulling</c> and the like.</summary>
internal sealed record DeclarationLine(DeclarationKind Kind, NameSyntax Name, ImmutableArray<ClauseSyntax> Clauses) : HeadLine;

/// <summary><c>spell running with bull from bull in until bull out</c>.</summary>
internal sealed record SpellLine(NameSyntax Name, NameSyntax From, NameSyntax Until) : HeadLine;

/// <summary><c>call heat also bulled, seen bulling</c>: further names for a word that is declared elsewhere.</summary>
internal sealed record CallLine(NameSyntax Name, AlsoClause Also) : HeadLine;

/// <summary>One thing that a declaration says of its name.</summary>
internal abstract record ClauseSyntax : SyntaxNode;

/// <summary><c>also heats, bulling</c>.</summary>
internal sealed record AlsoClause(ImmutableArray<NameSyntax> Names) : ClauseSyntax;

/// <summary><c>not before 15 months of age</c>.</summary>
internal sealed record NotBeforeClause(DurationSyntax Age) : ClauseSyntax;

/// <summary><c>joins the herd</c> or <c>leaves the herd</c>.</summary>
internal sealed record HerdClause(bool Joins) : ClauseSyntax;

/// <summary><c>in umol/L</c>.</summary>
internal sealed record InUnitClause(UnitSyntax Unit) : ClauseSyntax;

/// <summary><c>in the yards</c>.</summary>
internal sealed record InTheYardsClause : ClauseSyntax;

/// <summary><c>on scale 1 to 10</c>.</summary>
internal sealed record ScaleClause(NumberSyntax From, NumberSyntax To) : ClauseSyntax;

/// <summary><c>molar mass 63.546</c>.</summary>
internal sealed record MolarMassClause(NumberSyntax Value) : ClauseSyntax;

/// <summary><c>answers positive, negative</c>.</summary>
internal sealed record AnswersClause(ImmutableArray<NameSyntax> Answers) : ClauseSyntax;

/// <summary><c>is one of Friesian, Jersey</c>.</summary>
internal sealed record OneOfClause(ImmutableArray<NameSyntax> Values) : ClauseSyntax;

/// <summary><c>is number</c>, <c>is date</c>, <c>is text</c>, <c>is identity</c>.</summary>
internal sealed record IsTypeClause(Rulebooks.Words.FactType Type) : ClauseSyntax;
