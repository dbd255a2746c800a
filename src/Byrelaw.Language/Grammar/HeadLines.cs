using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines that start a block, other than declarations of words.</summary>
internal static class HeadLines
{
    private static readonly Parser<Token, TextSyntax> RuleName = Leaf.Text("the rule's name in quotes");

    private static readonly Parser<Token, LineSyntax> UsedFile = Leaf.Text("a file's path in quotes").Select<LineSyntax>(path => new UseLine(path) { Span = path.Span });

    private static readonly Parser<Token, LineSyntax> UsedBase = Map<Token, Token, NameSyntax, Maybe<NumberSyntax>, LineSyntax>(
        (start, name, edition) => new UseBaseLine(name, edition.HasValue ? edition.Value : null) { Span = start.Span.To(edition.HasValue ? edition.Value.Span : name.Span) },
        Leaf.Word("base", "`base` and a name such as `recipients`"),
        Leaf.NameOf(token => token.Kind is TokenKind.Word or TokenKind.Phrase && !token.Is("edition"), "the name of a base file, such as `recipients`"),
        Leaf.Word("edition").Then(Leaf.Number).Optional());

    public static readonly Parser<Token, LineSyntax> Use = Head("use", OneOf(UsedFile, UsedBase), line => line);

    public static readonly Parser<Token, LineSyntax> Define = Head("define", Leaf.DeclaredName("a name"), name => new DefineLine(name) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Rules = Head(
        "rules", Leaf.Word("for").Then(Leaf.ListName("the name of a list, such as `recipients`")), list => new RulesForLine(list) { Span = list.Span });

    public static readonly Parser<Token, LineSyntax> Rule = Head("rule", RuleName, name => new RuleLine(name, false) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Safety = Head(
        "safety", Leaf.Word("rule").Then(RuleName), name => new RuleLine(name, true) { Span = name.Span });

    private static readonly Parser<Token, TextSyntax> ExpectationName = Leaf.Text("the expectation's name in quotes");

    public static readonly Parser<Token, LineSyntax> Expectation = Head("expectation", ExpectationName, name => new ExpectationLine(name, false) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> SafetyExpectation = Head(
        "safety", Leaf.Word("expectation").Then(ExpectationName), name => new ExpectationLine(name, true) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Prefer = Head("prefer", Leaf.Text("a name in quotes"), name => new PreferLine(name) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Change = Head("change", RuleName, name => new ChangeLine(name) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Drop = Head("drop", RuleName, name => new DropLine(name) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Waive = Map<Token, Token, TextSyntax, TextSyntax, LineSyntax>(
        (start, rule, animal) => new WaiveLine(rule, animal) { Span = start.Span.To(animal.Span) },
        Leaf.Word("waive"), RuleName, Leaf.Word("for").Then(Leaf.Text("an animal's number in quotes")));

    public static readonly Parser<Token, LineSyntax> Records = Map<Token, Token, Maybe<TextSyntax>, LineSyntax>(
        (start, folder) => new RecordsLine(folder.GetValueOrDefault()) { Span = folder.HasValue ? start.Span.To(folder.Value.Span) : start.Span },
        Leaf.Word("records"), Leaf.Text("a folder in quotes").Optional());

    public static readonly Parser<Token, LineSyntax> Programme = Head("programme", Leaf.Text("a name in quotes"), name => new ProgrammeLine(name) { Span = name.Span });

    public static readonly Parser<Token, LineSyntax> Example = Head("example", Leaf.Text("a name in quotes"), name => new ExampleLine(name) { Span = name.Span });

    private static Parser<Token, LineSyntax> Head<T>(string word, Parser<Token, T> rest, Func<T, LineSyntax> make) =>
        Map((start, value) => { var line = make(value); return line with { Span = start.Span.To(line.Span) }; }, Leaf.Word(word), rest);
}
