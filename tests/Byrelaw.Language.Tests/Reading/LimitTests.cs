namespace Byrelaw.Language.Tests.Reading;

/// <summary>Limits that no file of a person comes near, so that no input hangs the reader.</summary>
public sealed class LimitTests
{
    [Fact]
    public void A_rulebook_has_at_most_five_hundred_files()
    {
        var files = new RuleFilesInMemory();
        for (var i = 0; i < 500; i++)
        {
            files.Add($"{i}.byre", "");
        }

        files.Add("farm.byre", Repeated(500, i => $"use \"{i}.byre\"\n"));
        Print(Rules.Read(files)).ShouldBe("""
            farm.byre:500:5: error B0006: this is one file too many; a rulebook has at most 500
              500 | use "499.byre"
                  |     ^^^^^^^^^^


            """.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_file_has_at_most_two_million_bytes() => Print(Rules.Read(new string(' ', 2_000_001))).ShouldBe("""
        farm.byre:1:1: error B0008: this file is too long for a rule file; at most 2000000 bytes
          help: is it a file of records?


        """.ReplaceLineEndings("\n"));

    [Fact]
    public void A_line_has_at_most_a_thousand_words() => Print(Rules.Read("event heat\ndefine it\n  no heat" + Repeated(999, _ => " or heat") + " ever\n")).ShouldBe("""
        farm.byre:3:4003: error B0107: this line goes on too long; a line has at most 1000 words
            3 | …eat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or heat or h…
              |                                                              ^^
          help: give parts of it names with `define`, or put them on lines that start with `- `


        """.ReplaceLineEndings("\n"));

    [Theory]
    [InlineData("word ")]
    [InlineData("word\n")]
    [InlineData("event a\n")]
    [InlineData("event a in b also c, d e, f\n")]
    [InlineData("- no heat ever\n")]
    [InlineData("\"text\" ")]
    [InlineData("\"text\" x ")]
    [InlineData("\"text\"\n")]
    [InlineData("(")]
    [InlineData("in in kg ")]
    [InlineData("define a\n  not a\n")]
    [InlineData("needs any of\n")]
    [InlineData("56 days since last ")]
    [InlineData("rule \"a\"\n  needs no heet ever\n  needs b\n")]
    [InlineData("change \"a\"\n")]
    [InlineData("1/2/3/4/5/6/7/8/9/")]
    [InlineData("19 October ")]
    public void What_is_repeated_without_end_is_answered(string piece)
    {
        var problems = Rules.Read(Repeated(200_000 / piece.Length, _ => piece)).Problems;
        problems.ShouldNotBeEmpty();
        DiagnosticText.Of(problems[0]).Length.ShouldBeLessThan(2000);
    }

    [Theory]
    [InlineData("event name {0}x\n", "a define that uses many names")]
    [InlineData("define d{0}x\n  no e{0}x ever\n", "unknown names")]
    [InlineData("change \"r{0}\"\n  counts 1\n", "unknown rules")]
    public void Many_different_names_are_answered(string pattern, string _)
    {
        var text = Repeated(8_000, i => string.Format(CultureInfo.InvariantCulture, pattern, Letters(i)));
        Rules.Read(text + "define it\n  no nmae ever\n").Problems.ShouldNotBeEmpty();
    }

    private static string Letters(int number) => string.Concat(number.ToString(CultureInfo.InvariantCulture).Select(digit => (char)('a' + digit - '0')));

    private static string Repeated(int times, Func<int, string> piece)
    {
        var text = new StringBuilder();
        for (var i = 0; i < times; i++)
        {
            text.Append(piece(i));
        }

        return text.ToString();
    }

    private static string Print(RulebookReading reading) => DiagnosticText.Of(reading.Problems);
}
