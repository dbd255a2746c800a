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

    private static readonly Parser<Token, ClauseSyntax> Herd = Map<Token, Token, Token, Maybe<Token>, ClauseSyntax>(
        (start, herd, good) => new HerdClause(start.Is("joins"), good.HasValue) { Span = start.Span.To(good.HasValue ? good.Value.Span : herd.Span) },
        OneOf(Leaf.Word("joins", "`joins the herd`"), Leaf.Word("leaves", "`leaves the herd`")),
        Leaf.Word("the").Then(Leaf.Word("herd")),
        Leaf.Word("for", "`for good`").Then(Leaf.Word("good")).Optional());

    private static readonly Parser<Token, ClauseSyntax> Marks = Map<Token, Token, NameSyntax, ClauseSyntax>(
        (start, what) => new MarksClause(what) { Span = start.Span.To(what.Span) },
        Leaf.Word("marks", "`marks treatment`"), Leaf.OneWord(token => token.Kind == TokenKind.Word && token.IsNamePart, "`collection`, `treatment` or `transfer`"));

    private static readonly Parser<Token, ClauseSyntax> OfEmbryos = Map<Token, Token, Token, ClauseSyntax>(
        (start, embryos) => new OfEmbryosClause { Span = start.Span.To(embryos.Span) },
        Leaf.Word("of", "`of embryos`"), Leaf.Word("embryos"));

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

    private static readonly Parser<Token, ClauseSyntax> Plausible = Map<Token, Token, NumberSyntax, NumberSyntax, ClauseSyntax>(
        (start, from, to) => new PlausibleClause(from, to) { Span = start.Span.To(to.Span) },
        Leaf.Word("plausible", "`plausible A to B`"), Leaf.Number, Leaf.Word("to").Then(Leaf.Number));

    private static readonly Parser<Token, ClauseSyntax> Detail = Map<Token, Token, NameSyntax, ClauseSyntax, ClauseSyntax>(
        (start, name, type) => new DetailClause(name, type) { Span = start.Span.To(type.Span) },
        Leaf.Word("with", "`with` and a detail"), Leaf.DeclaredName("a name for the detail"), OneOf(IsType, InUnit, OnScale));

    private static readonly Parser<Token, ClauseSyntax> BlankIs = Map<Token, Token, NameSyntax, ClauseSyntax>(
        (start, value) => new BlankIsClause(value) { Span = start.Span.To(value.Span) },
        Leaf.Word("blank", "`blank is`"), Leaf.Word("is").Then(Leaf.DeclaredName("a value of the detail before it")));

    public static readonly Parser<Token, LineSyntax> Event = Declared(DeclarationKind.Event, Also, NotBefore, Herd, Marks, OfEmbryos, Detail, BlankIs);

    public static readonly Parser<Token, LineSyntax> Measure = Declared(
        DeclarationKind.Measure, Also, Try(InTheYards), InUnit, OnScale, MolarMass, Plausible, Detail, BlankIs);

    public static readonly Parser<Token, LineSyntax> Test = Declared(DeclarationKind.Test, Also, Answers, InTheYards, Detail, BlankIs);

    public static readonly Parser<Token, LineSyntax> Fact = Declared(DeclarationKind.Fact, Also, InUnit, IsType, Plausible);

    private static readonly Parser<Token, Func<Token, LineSyntax>> Details = Map<Token, NameSyntax, ImmutableArray<ClauseSyntax>, Func<Token, LineSyntax>>(
        (name, clauses) => start => new AddDetailsLine(name, clauses) { Span = start.Span.To(clauses[^1].Span) },
        Leaf.Name("an event, measure or test"),
        Map((first, more) => ImmutableArray.CreateRange(more.Prepend(first)), Detail, Leaf.Comma.Labelled("").Optional().Then(OneOf(Detail, BlankIs)).Several()));

    private static readonly Parser<Token, Func<Token, LineSyntax>> Values = Map<Token, ImmutableArray<NameSyntax>, NameSyntax, Func<Token, LineSyntax>>(
        (values, fact) => start => new AddValuesLine(values, fact) { Span = start.Span.To(fact.Span) },
        Lists.Of(Leaf.DeclaredName("a value"), Leaf.Comma), Leaf.Word("to").Then(Leaf.Name("a fact")));

    public static readonly Parser<Token, LineSyntax> Add = Map((start, line) => line(start), Leaf.Word("add"), OneOf(Leaf.Word("to").Then(Details), Values));

    private static readonly Parser<Token, DurationSyntax> WithMale = Leaf.Word("or", "`or in a mob with a male from 6 months of age`")
        .Then(Leaf.Word("in")).Then(Leaf.Word("a")).Then(Leaf.Word("mob")).Then(Leaf.Word("with")).Then(Leaf.Word("a")).Then(Leaf.Word("male"))
        .Then(Leaf.Word("from")).Then(Leaf.Duration).Before(Leaf.Word("of")).Before(Leaf.Word("age"));

    public static readonly Parser<Token, LineSyntax> Spell = Map<Token, Token, NameSyntax, NameSyntax, NameSyntax, Maybe<DurationSyntax>, LineSyntax>(
        (start, name, from, until, male) => new SpellLine(name, from, until, male.GetValueOrDefault())
        {
            Span = start.Span.To(male.HasValue ? male.Value.Span : until.Span),
        },
        Leaf.Word("spell"), Leaf.DeclaredName("a name for the spell"),
        Leaf.Word("from").Then(Leaf.Name("the event that starts it")),
        Leaf.Word("until").Then(Leaf.Name("the event that ends it")),
        Leaf.Comma.Labelled("").Then(WithMale).Optional());

    public static readonly Parser<Token, LineSyntax> Call = Map<Token, Token, NameSyntax, ClauseSyntax, LineSyntax>(
        (start, name, also) => new CallLine(name, (AlsoClause)also) { Span = start.Span.To(also.Span) },
        Leaf.Word("call"), Leaf.Name("a declared name"), Also);

    public static readonly Parser<Token, LineSyntax> Hint = Map<Token, Token, ImmutableArray<NameSyntax>, NameSyntax, LineSyntax>(
        (start, words, kind) => new HintLine(words, kind) { Span = start.Span.To(kind.Span) },
        Leaf.Word("hint"), Lists.Of(Leaf.NameUntil("may", "a word that people write"), Leaf.Comma),
        Leaf.Word("may").Then(Leaf.Word("be")).Then(Leaf.Name("an event, measure or test")));

    private static Parser<Token, Func<Token, ClauseSyntax>> Type(string word, FactType type) =>
        Leaf.Word(word).Select<Func<Token, ClauseSyntax>>(token => start => new IsTypeClause(type) { Span = start.Span.To(token.Span) });

    private static Parser<Token, LineSyntax> Declared(DeclarationKind kind, params IEnumerable<Parser<Token, ClauseSyntax>> clauses) =>
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
        Leaf.Word("joins", "").Then(Leaf.Word("the", "")), Leaf.Word("leaves", "").Then(Leaf.Word("the", "")), Leaf.Word("molar", "").Then(Leaf.Word("mass", "")),
        Leaf.Word("marks", "").Then(Parser<Token>.Token(token => token.Kind == TokenKind.Word)), Leaf.Word("blank", "").Then(Leaf.Word("is", "")), Leaf.Word("plausible", "").Then(Parser<Token>.Token(token => token.Kind == TokenKind.Number)));
}
