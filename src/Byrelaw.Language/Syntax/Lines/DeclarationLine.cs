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

/// <summary><c>spell running with bull from bull in until bull out, or in a mob with a male from 6 months of age</c>.</summary>
/// <param name="Name">Of the spell.</param>
/// <param name="From">The event that starts it.</param>
/// <param name="Until">The event that ends it.</param>
/// <param name="WithMaleFrom">The age from which a male in her mob counts as well; null where none does.</param>
internal sealed record SpellLine(NameSyntax Name, NameSyntax From, NameSyntax Until, DurationSyntax? WithMaleFrom) : HeadLine;

/// <summary><c>add to mating with purpose is one of calf, flushing</c>: further details of a word that is declared elsewhere.</summary>
internal sealed record AddDetailsLine(NameSyntax Name, ImmutableArray<ClauseSyntax> Clauses) : HeadLine;

/// <summary><c>add wild, flighty to temperament</c>: further values of a fact that is declared elsewhere.</summary>
internal sealed record AddValuesLine(ImmutableArray<NameSyntax> Values, NameSyntax Fact) : HeadLine;

/// <summary><c>call heat also bulled, seen bulling</c>: further names for a word that is declared elsewhere.</summary>
internal sealed record CallLine(NameSyntax Name, AlsoClause Also) : HeadLine;

/// <summary><c>hint AI, KI may be mating</c>: what words in other people's records may mean. Help and doubt, never a reading.</summary>
internal sealed record HintLine(ImmutableArray<NameSyntax> Words, NameSyntax Kind) : HeadLine;

/// <summary>One thing that a declaration says of its name.</summary>
internal abstract record ClauseSyntax : SyntaxNode;

/// <summary><c>also heats, bulling</c>.</summary>
internal sealed record AlsoClause(ImmutableArray<NameSyntax> Names) : ClauseSyntax;

/// <summary><c>not before 15 months of age</c>.</summary>
internal sealed record NotBeforeClause(DurationSyntax Age) : ClauseSyntax;

/// <summary><c>joins the herd</c>, <c>leaves the herd</c> or <c>leaves the herd for good</c>.</summary>
internal sealed record HerdClause(bool Joins, bool ForGood) : ClauseSyntax;

/// <summary><c>marks treatment</c>: which step of a programme an entry of the event is.</summary>
internal sealed record MarksClause(NameSyntax What) : ClauseSyntax;

/// <summary><c>of embryos</c>: it happens to embryos, not to animals.</summary>
internal sealed record OfEmbryosClause : ClauseSyntax;

/// <summary><c>with method is one of ultrasound, hand</c>: what more is known of an entry.</summary>
/// <param name="Name">The detail's name.</param>
/// <param name="Type">What its value looks like: a unit, a scale, values or a type.</param>
internal sealed record DetailClause(NameSyntax Name, ClauseSyntax Type) : ClauseSyntax;

/// <summary><c>blank is hand</c>: what a blank cell of the detail before it counts as.</summary>
internal sealed record BlankIsClause(NameSyntax Value) : ClauseSyntax;

/// <summary><c>plausible 1 to 20000</c>: values outside cannot be.</summary>
internal sealed record PlausibleClause(NumberSyntax From, NumberSyntax To) : ClauseSyntax;

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
