namespace Byrelaw.Language.Tests.Lexing;

/// <summary>Whatever stands in a file, nothing of it gets lost between the tokens.</summary>
public sealed class LexerFuzzTests
{
    private static readonly string[] Pieces =
    [
        "needs", "at", "least", "56", " ", "  ", "\n", "\r\n", "\r", "\t", "\"", "\\", "\"a\"", "#", "# c\n", "- ", "-", ",", ".", "/", "%", "4.5", "2026-10-19",
        "19/10/2026", "19 October 2026", "é", "µ", "Ж", "牛", "😀", "“", "”", "’", "\u200B", "\uFEFF", "\u0301", "°C", "umol/L", ">=", "(", "\0",
    ];

    private static readonly Gen<string> Text = Gen.OneOf(
        Gen.Int[0, Pieces.Length - 1].Select(place => Pieces[place]).Array[0, 40].Select(string.Concat),
        Gen.Char.Array[0, 60].Select(characters => new string(characters)));

    [Fact]
    public void Gaps_between_tokens_and_comments_hold_only_blanks() => Text.Hold(
        text =>
        {
            var file = Tokens.Lex(text);
            var spans = file.Tokens.Select(token => token.Span).Concat(file.Comments).OrderBy(span => span.Start).ToList();
            var at = 0;
            foreach (var span in spans)
            {
                if (span.Start < at || !string.IsNullOrWhiteSpace(file.File.Text[at..span.Start]))
                {
                    return false;
                }

                at = span.End;
            }

            return string.IsNullOrWhiteSpace(file.File.Text[at..]);
        },
        count: 20_000);

    [Fact]
    public void Each_comment_is_owned_by_one_token() => Text.Hold(
        text =>
        {
            var file = Tokens.Lex(text);
            return file.Tokens.SelectMany(token => Enumerable.Range(token.FirstComment, token.CommentCount))
                .SequenceEqual(Enumerable.Range(0, file.Comments.Count));
        },
        count: 20_000);

    [Fact]
    public void Each_token_but_the_last_has_a_length_and_each_bad_one_a_problem() => Text.Hold(
        text => Tokens.Lex(text).Tokens.All(token =>
            (token.Kind == TokenKind.EndOfFile) == (token.Span.Length == 0) && (token.Kind == TokenKind.Bad) == (token.Problem is not null)),
        count: 20_000);
}
