using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Several of a thing.</summary>
internal static class Lists
{
    /// <summary>Names joined by <c>or</c>.</summary>
    public static Parser<Token, ImmutableArray<NameSyntax>> Kinds(string label) => Of(FilterClauses.Of(Leaf.Name(label)), Leaf.Word("or"));

    /// <summary>Names separated by commas.</summary>
    public static Parser<Token, ImmutableArray<NameSyntax>> Names(string label) => Of(Leaf.Name(label), Leaf.Comma);

    /// <summary>At least one item, with separators between.</summary>
    public static Parser<Token, ImmutableArray<T>> Of<T>(Parser<Token, T> item, Parser<Token, Token> separator) =>
        Map((first, more) => ImmutableArray.CreateRange(more.Prepend(first)), item, separator.Then(item).Several());
}
