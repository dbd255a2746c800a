namespace Byrelaw.Language.Tests.Lexing;

public sealed class LexerTests
{
    [Theory]
    [InlineData("needs at least 56 days", "Word needs | Word at | Word least | Number 56 | Word days")]
    [InlineData("4.5 -1 20% 2026-10-19", "Number 4.5 | Number -1 | Percent 20% | Date 2026-10-19")]
    [InlineData("8 umol/L, 5 µmol/L", "Number 8 | Unit umol/L | Comma , | Number 5 | Unit µmol/L")]
    [InlineData("38.6 °C", "Number 38.6 | Unit °C")]
    [InlineData("dry-off Johne's kūao Ölung корова 牛", "Word dry-off | Word Johne's | Word kūao | Word Ölung | Word корова | Word 牛")]
    [InlineData("B12 vitamin-2", "Word B12 | Word vitamin-2")]
    [InlineData("  - no heat - 5", "Bullet - | Word no | Word heat | Bad - | Number 5")]
    [InlineData("because \"a \\\"b\\\" \\\\ c\"", "Word because | Text a \"b\" \\ c")]
    [InlineData("may 5 may", "Word may | Number 5 | Word may")]
    public void A_line_is_cut_into_words_numbers_and_texts(string text, string expected) => Tokens.Kinds(text).ShouldBe(expected);

    [Fact]
    public void A_comment_runs_to_the_end_of_the_line_and_belongs_to_the_token_after_it()
    {
        var file = Tokens.Lex("# first\nuse \"a\" # second\n# third\nevent heat");
        file.Comments.Select(comment => comment.Text).ShouldBe(["# first", "# second", "# third"]);
        file.Tokens.Where(token => token.CommentCount > 0).Select(token => token.Kind)
            .ShouldBe([TokenKind.EndOfLine, TokenKind.EndOfLine, TokenKind.EndOfLine]);
    }

    [Fact]
    public void A_hash_inside_a_text_starts_no_comment() => Tokens.Kinds("source \"a # b\"").ShouldBe("Word source | Text a # b");

    [Fact]
    public void A_byte_order_mark_is_no_token() => Tokens.Kinds("\uFEFFevent heat").ShouldBe("Word event | Word heat");

    [Fact]
    public void Lines_may_end_with_LF_or_CRLF()
    {
        Tokens.Statements("event heat\r\nevent mating\n").ShouldBe(["event heat", "event mating"]);
        new SourceFile("a", "event heat\r\nevent mating").Line(1).ShouldBe("event heat");
    }

    [Fact]
    public void Texts_that_follow_each_other_join_with_one_space()
    {
        Tokens.Statements("because \"one\" \"two\"\n  \"three \"\n\n  # a comment between\n  \" four\"\nsource \"five\"")
            .ShouldBe(["because one two three four", "source five"]);
    }

    [Fact]
    public void A_text_does_not_join_a_line_that_ends_with_something_else()
    {
        Tokens.Statements("on the day\n\"text\"").ShouldBe(["on the day", "text"]);
    }

    [Fact]
    public void A_line_on_which_more_than_texts_stands_is_a_statement_of_its_own()
    {
        Tokens.Statements("prefer \"a\"\n  \"bull in\" is recorded\n  because \"b\"").ShouldBe(["prefer a", "bull in is recorded", "because b"]);
    }

    [Theory]
    [InlineData("umol/L", "umol/L")]
    [InlineData("µmol/L", "umol/l")]
    [InlineData("μmol/L", "umol/l")]
    public void There_is_one_micro_sign(string written, string other) =>
        Byrelaw.Language.Rulebooks.Words.NameFolding.Fold(written).ShouldBe(Byrelaw.Language.Rulebooks.Words.NameFolding.Fold(other));
}
