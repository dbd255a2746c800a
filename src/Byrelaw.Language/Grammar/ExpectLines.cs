using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>What an example expects.</summary>
internal static class ExpectLines
{
    private static readonly Parser<Token, (ExpectedAnswer Answer, SourceSpan Span)> Answer = OneOf(
        Answers(ExpectedAnswer.Met, "met"), Answers(ExpectedAnswer.DoesNotApply, "does", "not", "apply"),
        Answers(ExpectedAnswer.True, "true"), Answers(ExpectedAnswer.False, "false"),
        Answers(ExpectedAnswer.Ready, "ready"), Answers(ExpectedAnswer.OnCourse, "on", "course"),
        Answers(ExpectedAnswer.Later, "later"), Answers(ExpectedAnswer.Ask, "ask"), Answers(ExpectedAnswer.No, "no"),
        Leaf.Word("not", "").Then(OneOf(Answers(ExpectedAnswer.NotMet, "met"), Answers(ExpectedAnswer.NotKnown, "known")), (not, rest) => (rest.Answer, not.Span.To(rest.Span))))
        .Labelled("an answer, such as `met`, `not met`, `not known` or `does not apply`");

    private static readonly Parser<Token, ImmutableArray<NameSyntax>> Names = Lists.Of(Leaf.Name("a name"), Leaf.Word("and"));

    private static readonly Parser<Token, ExpectClauseSyntax> Clause = OneOf(
        Day(ExpectClause.From, Leaf.Word("from")),
        Day(ExpectClause.Until, Leaf.Word("until")),
        Day(ExpectClause.NotBefore, Leaf.Word("not", "`not before`").Before(Leaf.Word("before"))),
        Named(ExpectClause.BecauseOf, Leaf.Word("because", "`because of`").Before(Leaf.Word("of"))),
        Named(ExpectClause.Missing, Leaf.Word("missing")));

    private static readonly Parser<Token, (TextSyntax? Rule, NameSyntax? Name)> Target = OneOf(
        Leaf.Text("a rule's name in quotes").Select<(TextSyntax?, NameSyntax?)>(rule => (rule, null)),
        Leaf.NameOf(IsName, "a list or a defined condition").Select<(TextSyntax?, NameSyntax?)>(name => (null, name)));

    public static readonly Parser<Token, LineSyntax> Expect = Map<Token, Token, (TextSyntax? Rule, NameSyntax? Name), (ExpectedAnswer Answer, SourceSpan Span), IEnumerable<ExpectClauseSyntax>, LineSyntax>(
        (start, target, answer, said) =>
        {
            var clauses = said.ToImmutableArray();
            return new ExpectLine(target.Rule, target.Name, answer.Answer, answer.Span, clauses)
            {
                Span = start.Span.To(clauses.IsEmpty ? answer.Span : clauses[^1].Span),
            };
        },
        Leaf.Word("expect"), Target, Answer, Leaf.Comma.Then(Clause).Several());

    private static bool IsName(Token token) =>
        token.IsNamePart && token.Kind != TokenKind.Text && token.Folded is not ("met" or "does" or "true" or "false" or "ready" or "later" or "ask");

    private static Parser<Token, (ExpectedAnswer Answer, SourceSpan Span)> Answers(ExpectedAnswer answer, params string[] words)
    {
        var whole = Leaf.Word(words[0], "").Select(token => token.Span);
        foreach (var word in words[1..])
        {
            whole = Map((start, end) => start.To(end.Span), whole, Leaf.Word(word));
        }

        return whole.Select(span => (answer, span));
    }

    private static Parser<Token, ExpectClauseSyntax> Day(ExpectClause kind, Parser<Token, Token> words) => Map(
        (start, day) => new ExpectClauseSyntax(kind, day, []) { Span = start.Span.To(day.Span) }, words, Leaf.Date);

    private static Parser<Token, ExpectClauseSyntax> Named(ExpectClause kind, Parser<Token, Token> words) => Map(
        (start, names) => new ExpectClauseSyntax(kind, null, names) { Span = start.Span.To(names[^1].Span) }, words, Names);
}
