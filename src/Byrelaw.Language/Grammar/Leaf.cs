using Pidgin;
using static Pidgin.Parser<Byrelaw.Language.Lexing.Token>;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>
/// Single tokens, and the plainest joins of them. Labels, which become the "expected" of a message,
/// stand on these only: on a longer phrase a label would hide what was expected inside it. An empty label is
/// not shown.
/// </summary>
internal static class Leaf
{
    public static readonly Parser<Token, Token> Comma = Kind(TokenKind.Comma, "a comma");

    public static readonly Parser<Token, Token> Bullet = Kind(TokenKind.Bullet, "`- `");

    public static readonly Parser<Token, NumberSyntax> Number = Kind(TokenKind.Number, "a number").Select(ToNumber);

    public static readonly Parser<Token, NumberSyntax> Percent = Kind(TokenKind.Percent, "a per cent such as `20%`").Select(ToNumber);

    public static readonly Parser<Token, DateSyntax> Date =
        Kind(TokenKind.Date, "a date such as `2026-10-19`").Select(token => new DateSyntax(token.Date) { Span = token.Span });

    public static readonly Parser<Token, UnitSyntax> Unit =
        Noted(token => token.Kind == TokenKind.Unit || (token.Kind == TokenKind.Word && token.IsNamePart), LeafKind.Unit)
            .Labelled("a unit").Select(token => new UnitSyntax(token.Text) { Span = token.Span });

    /// <summary>A unit that is one word and no name.</summary>
    public static readonly Parser<Token, Token> UnitWord =
        Noted(token => token.Kind == TokenKind.Word && token.IsNamePart, LeafKind.Unit).Labelled("a unit");

    public static readonly Parser<Token, Token> DurationUnit =
        Noted(token => token.Kind == TokenKind.Word && TimeUnitWords.Find(token.Folded) is not null, LeafKind.TimeUnit).Labelled("`days`, `weeks`, `months` or `years`");

    public static readonly Parser<Token, DurationSyntax> Duration = Map(ToDuration, Number, DurationUnit);

    /// <summary>A word of the language itself.</summary>
    public static Parser<Token, Token> Word(string word, string? label = null) =>
        Noted(token => token.Is(word), LeafKind.Word, word).Labelled(label ?? $"`{word}`");

    /// <summary>A text in quotes.</summary>
    public static Parser<Token, TextSyntax> Text(string label) =>
        Kind(TokenKind.Text, label).Select(token => new TextSyntax(token.Text) { Span = token.Span });

    /// <summary>A name: free words, up to a reserved one.</summary>
    public static Parser<Token, NameSyntax> Name(string label) =>
        Map(NameSyntax.Of, First(token => token.IsNamePart, label), More(token => token.IsNamePart, label).Several());

    /// <summary>The name of a list: free words without quotes, for texts in quotes where a list may stand are animals.</summary>
    public static Parser<Token, NameSyntax> ListName(string label) =>
        Map(NameSyntax.Of, First(IsFree, label), More(IsFree, label).Several());

    /// <summary>A name of whatever tokens hold.</summary>
    public static Parser<Token, NameSyntax> NameOf(Func<Token, bool> holds, string label) =>
        Map(NameSyntax.Of, First(holds, label), More(holds, label).Several());

    /// <summary>A name of one token.</summary>
    public static Parser<Token, NameSyntax> OneWord(Func<Token, bool> holds, string label) =>
        First(holds, label).Select(token => NameSyntax.Of(token, []));

    private static bool IsFree(Token token) =>
        token.IsNamePart && token.Kind != TokenKind.Text && !token.Folded.Split(' ').Any(LanguageWords.EndName);

    /// <summary>A name that is being declared: one token by now (see <see cref="DeclaredNames"/>), so that
    /// free words after it, as in <c>event sale leaves the herd</c>, are not part of it.</summary>
    public static Parser<Token, NameSyntax> DeclaredName(string label) =>
        Noted(token => token.IsNamePart, LeafKind.DeclaredName, label).Labelled(label).Select(token => NameSyntax.Of(token, []));

    /// <summary>A name that stops at <paramref name="end"/> too.</summary>
    public static Parser<Token, NameSyntax> NameUntil(string end, string label) => Map(
        NameSyntax.Of,
        First(token => token.IsNamePart, label),
        More(token => token.IsNamePart && !token.Is(end), label).Several());

    public static DurationSyntax ToDuration(NumberSyntax count, Token unit) =>
        new(count, TimeUnitWords.Find(unit.Folded) ?? TimeUnit.Days) { Span = count.Span.To(unit.Span) };

    private static Parser<Token, Token> First(Func<Token, bool> holds, string label) => Noted(holds, LeafKind.Name, label).Labelled(label);

    private static Parser<Token, Token> More(Func<Token, bool> holds, string label) => Noted(holds, LeafKind.MoreOfName, label).Labelled("");

    private static Parser<Token, Token> Kind(TokenKind kind, string label) => Noted(token => token.Kind == kind, OfKind(kind), label).Labelled(label);

    private static LeafKind OfKind(TokenKind kind) => kind switch
    {
        TokenKind.Text => LeafKind.Text,
        TokenKind.Date => LeafKind.Date,
        TokenKind.Comma => LeafKind.Comma,
        TokenKind.Bullet => LeafKind.Bullet,
        _ => LeafKind.Number,
    };

    private static NotedLeaf Noted(Func<Token, bool> holds, LeafKind kind, string label = "") => new(holds, new Wanted(kind, label));

    private static NumberSyntax ToNumber(Token token) => new(token.Number) { Span = token.Span };
}
