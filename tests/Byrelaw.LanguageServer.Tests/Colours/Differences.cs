using Byrelaw.Language.Sources;
using TextMateSharp.Grammars;

namespace Byrelaw.LanguageServer.Tests.Colours;

/// <summary>
/// Where the editor's colours say something else of a word than the language itself. What patterns cannot know, because they
/// see no declarations, is no difference: what sort of thing a name names, and that a word which the language keeps for
/// itself is part of a declared name, such as <c>bull in</c> or <c>running with bull</c>; nor that a text in quotes is a name.
/// </summary>
internal static class Differences
{
    /// <summary>The differences in a file, as <c>line: word is CLASS, coloured as CLASS</c>. A line with an error is not looked at: of
    /// what was not understood the language can only guess too.</summary>
    public static IEnumerable<string> In(RulebookView view, SourceFile file)
    {
        var colours = TextMateColours.Once;
        var wrong = view.Reading.Problems.Where(problem => problem.File == file.Path && problem.Severity == Severity.Error).Select(problem => problem.Line).ToHashSet();
        var tokens = view.TokensOf(file).ToLookup(token => token.Span.Line);
        IStateStack? state = null;
        for (var line = 1; line <= file.LineCount; line++)
        {
            var coloured = colours.Line(file.Line(line), ref state);
            foreach (var token in wrong.Contains(line) ? [] : tokens[line])
            {
                var (word, meant) = (token.Span.Text, Coarse(token.Class));
                var seen = coloured[(token.Span.Column - 1)..(token.Span.Column - 1 + token.Span.Length)].Distinct().ToList();
                var isKeptWordInAName = meant == TokenClass.Name && seen is [TokenClass.Keyword] && RulebookView.NeedsQuotes(word);
                var isNameInQuotes = meant == TokenClass.Name && seen is [TokenClass.Text] && word[0] == '"';
                if (!isKeptWordInAName && !isNameInQuotes && (seen is not [{ } one] || one != meant))
                {
                    yield return $"{line}: {word} is {meant}, coloured as {string.Join(" and ", seen)}";
                }
            }
        }
    }

    /// <summary>What patterns can know: all names are one class.</summary>
    private static TokenClass Coarse(TokenClass token) => token switch
    {
        TokenClass.Event or TokenClass.Measure or TokenClass.Test or TokenClass.Fact or TokenClass.Spell or TokenClass.Define
            or TokenClass.DateName or TokenClass.List or TokenClass.Answer => TokenClass.Name,
        _ => token,
    };
}
