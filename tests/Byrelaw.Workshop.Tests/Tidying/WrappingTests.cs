namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>Reasons and sources run over lines of 100 columns, and start in one column.</summary>
public sealed class WrappingTests
{
    private const string Before = "event heat\n\nrules for x\n\nrule \"A\"\n  needs no heat ever\n";

    [Fact]
    public void A_long_reason_runs_on_below_its_start()
    {
        var reason = string.Join(' ', Enumerable.Repeat("word", 40));
        var tidied = Tidied.Text($"{Before}because \"{reason}\" source \"s\"".Replace(" source", "\nsource", StringComparison.Ordinal));

        tidied.ShouldBe(
            $"{Before}  because \"{string.Join(' ', Enumerable.Repeat("word", 17))}\"\n          \"{string.Join(' ', Enumerable.Repeat("word", 17))}\"\n"
            + "          \"word word word word word word\"\n  source  \"s\"\n");
    }

    [Fact]
    public void Short_texts_that_follow_each_other_are_joined() =>
        Tidied.Text(Before + "because \"one \"\n  \"two\" \"three\"").ShouldBe(Before + "  because \"one two three\"\n");

    [Fact]
    public void A_line_of_exactly_100_columns_stays_and_one_of_101_is_parted()
    {
        var text = new string('a', 50) + " " + new string('b', 37);

        Tidied.Text($"{Before}because \"{text}\"").ShouldBe($"{Before}  because \"{text}\"\n");
        Tidied.Text($"{Before}because \"{text}b\"").ShouldBe($"{Before}  because \"{new string('a', 50)}\"\n          \"{new string('b', 38)}\"\n");
    }

    [Theory]
    [InlineData(" space before")]
    [InlineData("space after ")]
    [InlineData("two  spaces")]
    public void Space_that_joining_would_change_is_kept(string odd)
    {
        var text = $"{odd}{new string('x', 120)}";
        text = odd.EndsWith(' ') ? $"{new string('x', 120)} {odd}" : text;

        Tidied.Text($"{Before}because \"{text}\"").ShouldBe($"{Before}  because \"{text}\"\n");
    }

    [Fact]
    public void A_word_that_no_line_holds_stands_alone()
    {
        var word = new string('x', 120);

        Tidied.Text($"{Before}because \"a {word} b\"").ShouldBe($"{Before}  because \"a\"\n          \"{word}\"\n          \"b\"\n");
    }
}
