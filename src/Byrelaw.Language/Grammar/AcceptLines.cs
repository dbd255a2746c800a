using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary><c>accept "No discharge" as passing what is not known</c>: a trouble that people know of and live with.</summary>
internal static class AcceptLines
{
    private static readonly Parser<Token, TextSyntax> OtherName = Leaf.Text("the other name in quotes");

    private static readonly Parser<Token, Said> Trouble = OneOf(
        Leaf.Word("never").Then(OneOf(
            Words(TroubleSort.NeverUsed, "used"),
            Map(
                (met, other) => other.HasValue ? new Said(TroubleSort.NeverMetWith, met, other.Value) : new Said(TroubleSort.NeverMet, met, null),
                Leaf.Word("met"), Leaf.Word("with").Then(OtherName).Optional()))),
        Words(TroubleSort.AlwaysMet, "always", "met"),
        With(TroubleSort.ImpliedBy, "implied", "by"),
        Words(TroubleSort.OutOfReach, "out", "of", "reach"),
        Words(TroubleSort.PassesNotKnown, "passing", "what", "is", "not", "known"),
        Words(TroubleSort.TestsEarly, "testing", "early"),
        With(TroubleSort.LooksLike, "looking", "like"));

    public static readonly Parser<Token, LineSyntax> Accept = Map<Token, Token, TextSyntax, Said, LineSyntax>(
        (start, name, said) => new AcceptLine(name, said.Trouble, said.Other) { Span = start.Span.To(said.Other?.Span ?? said.Last.Span) },
        Leaf.Word("accept"), Leaf.Text("a name in quotes"), Leaf.Word("as").Then(Trouble));

    private static Parser<Token, Said> Words(TroubleSort trouble, params string[] words) =>
        Phrase(words).Select(last => new Said(trouble, last, null));

    private static Parser<Token, Said> With(TroubleSort trouble, params string[] words) =>
        Map((last, other) => new Said(trouble, last, other), Phrase(words), OtherName);

    private static Parser<Token, Token> Phrase(string[] words) =>
        words.Skip(1).Aggregate(Leaf.Word(words[0]), (before, word) => before.Then(Leaf.Word(word)));

    private sealed record Said(TroubleSort Trouble, Token Last, TextSyntax? Other);
}
