using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines that declare the words of the farm. Their names are whole phrases by now: see
/// <see cref="DeclaredNames"/>.</summary>
internal static class Declarations
{
    private static readonly Parser<Token, ClauseSyntax> Also = Map<Token, Token, ImmutableArray<NameSyntax>, ClauseSyntax>(
        (start, names) => new AlsoClause(names) { Span = start.Span.To(names[^1].Span) },
        Leaf.Word("also"), ItemsOf("another name"));

    private static readonly Parser<Token, ClauseSyntax> InTheYards = Map<Token, Token, Token, ClauseSyntax>(
        (start, yards) => new InTheYardsClause { Span = start.Span.To(yards.Span) },
        Leaf.Word("in", "`in the yards`"), Leaf.Word("the").Then(Leaf.Word("yards")));

    private static readonly Parser<Token, ClauseSyntax> InUnit = Map<Token, Token, UnitSyntax, ClauseSyntax>(
        (start, unit) => new InUnitClause(unit) { Span = start.Span.To(unit.Span) }, Leaf.Word("in"), Leaf.Unit);

    private static readonly Parser<Token, ClauseSyntax> NotBefore = Map<Token, Token, DurationSyntax, Token, ClauseSyntax>(
        (start, age, end) => new NotBeforeClause(age) { Span = start.Span.To(end.Span) },
        Leaf.Word("not", "`not before`"), Leaf.Word("before").Then(Leaf.Duration), Leaf.Word("of").Then(Leaf.Word("age")));

    private static readonly Parser<Token, ClauseSyntax> Herd = Map<Token, Token, Token, ClauseSyntax>(
        (start, herd) => new HerdClause(start.Is("joins")) { Span = start.Span.To(herd.Span) },
        OneOf(Leaf.Word("joins", "`joins the herd`"), Leaf.Word("leaves", "`leaves the herd`")),
        Leaf.Word("the").Then(Leaf.Word("herd")));

    private static readonly Parser<Token, ClauseSyntax> OnScale = Map<Token, Token, NumberSyntax, NumberSyntax, ClauseSyntax>(
        (start, from, to) => new ScaleClause(from, to) { Span = start.Span.To(to.Span) },
        Leaf.Word("on", "`on scale`"), Leaf.Word("scale").Then(Leaf.Number), Leaf.Word("to").Then(Leaf.Number));

    private static readonly Parser<Token, ClauseSyntax> MolarMass = Map<Token, Token, NumberSyntax, ClauseSyntax>(
        (start, value) => new MolarMassClause(value) { Span = start.Span.To(value.Span) },
        Leaf.Word("molar", "`molar mass`"), Leaf.Word("mass").Then(Leaf.Number));

    private static readonly Parser<Token, ClauseSyntax> Answers = Map<Token, Token, ImmutableArray<NameSyntax>, ClauseSyntax>(
        (start, names) => new AnswersClause(names) { Span = start.Span.To(names[^1].Span) },
        Leaf.Word("answers"), ItemsOf("an answer"));

    private static readonly Parser<Token, ClauseSyntax> IsType = Map<Token, Token, Func<Token, ClauseSyntax>, ClauseSyntax>(
        (start, finish) => finish(start),
        Leaf.Word("is"),
        OneOf(
            Leaf.Word("one", "`one of`").Then(Leaf.Word("of")).Then(ItemsOf("a value")).Select<Func<Token, ClauseSyntax>>(
                values => start => new OneOfClause(values) { Span = start.Span.To(values[^1].Span) }),
            Type("number", FactType.Number), Type("date", FactType.Date), Type("text", FactType.Text), Type("identity", FactType.Identity)));

    public static readonly Parser<Token, LineSyntax> Event = Of(DeclarationKind.Event, Also, NotBefore, Herd);

    public static readonly Parser<Token, LineSyntax> Measure = Of(DeclarationKind.Measure, Also, Try(InTheYards), InUnit, OnScale, MolarMass);

    public static readonly Parser<Token, LineSyntax> Test = Of(DeclarationKind.Test, Also, Answers, InTheYards);

    public static readonly Parser<Token, LineSyntax> Fact = Of(DeclarationKind.Fact, Also, InUnit, IsType);

    public static readonly Parser<Token, LineSyntax> Spell = Map<Token, Token, NameSyntax, NameSyntax, NameSyntax, LineSyntax>(
        (start, name, from, until) => new SpellLine(name, from, until) { Span = start.Span.To(until.Span) },
        Leaf.Word("spell"), Leaf.DeclaredName("a name for the spell"),
        Leaf.Word("from").Then(Leaf.Name("the event that starts it")),
        Leaf.Word("until").Then(Leaf.Name("the event that ends it")));

    public static readonly Parser<Token, LineSyntax> Call = Map<Token, Token, NameSyntax, ClauseSyntax, LineSyntax>(
        (start, name, also) => new CallLine(name, (AlsoClause)also) { Span = start.Span.To(also.Span) },
        Leaf.Word("call"), Leaf.Name("a declared name"), Also);

    private static Parser<Token, Func<Token, ClauseSyntax>> Type(string word, FactType type) =>
        Leaf.Word(word).Select<Func<Token, ClauseSyntax>>(token => start => new IsTypeClause(type) { Span = start.Span.To(token.Span) });

    private static Parser<Token, LineSyntax> Of(DeclarationKind kind, params IEnumerable<Parser<Token, ClauseSyntax>> clauses) =>
        Map<Token, Token, NameSyntax, IEnumerable<ClauseSyntax>, LineSyntax>(
            (start, name, said) =>
            {
                var clauses = said.ToImmutableArray();
                return new DeclarationLine(kind, name, clauses) { Span = start.Span.To(clauses.IsEmpty ? name.Span : clauses[^1].Span) };
            },
            Parser<Token>.Any, Leaf.DeclaredName("a name"), Leaf.Comma.Labelled("").Optional().Then(OneOf(clauses)).Several());

    /// <summary>Names separated by commas; a comma that another clause follows ends them.</summary>
    private static Parser<Token, ImmutableArray<NameSyntax>> ItemsOf(string label) => Map(
        (first, more) => ImmutableArray.CreateRange(more.Prepend(first)),
        Leaf.DeclaredName(label), Try(Leaf.Comma.Labelled("").Then(Not(Try(ClauseOfFreeWords()))).Then(Leaf.DeclaredName(label))).Several());

    // Every other clause starts with a reserved word, where no name goes on anyway.
    private static Parser<Token, Token> ClauseOfFreeWords() => OneOf(
        Leaf.Word("joins", "").Then(Leaf.Word("the", "")), Leaf.Word("leaves", "").Then(Leaf.Word("the", "")), Leaf.Word("molar", "").Then(Leaf.Word("mass", "")));
}
