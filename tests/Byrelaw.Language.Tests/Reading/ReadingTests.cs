namespace Byrelaw.Language.Tests.Reading;

public sealed class ReadingTests
{
    [Fact]
    public void A_file_that_is_not_there_is_no_reading() => RulebookReader.Read("farm.byre", new RuleFilesInMemory()).ShouldBeNull();

    [Fact]
    public void An_empty_file_is_an_empty_rulebook() => Rules.Good("").Rules.ShouldBeEmpty();

    [Theory]
    [InlineData("\uFEFFevent heat\r\ndefine it\r\n  no heat ever\r\n")]
    [InlineData("event heat\ndefine it\n  no heat ever")]
    [InlineData("event heat\n\n\n  define it # comment\n# comment\n\tno\u00A0heat   ever  # comment")]
    public void Line_ends_marks_blanks_and_comments_do_not_matter(string text) => Rules.Good(text).Defines.Length.ShouldBe(1);

    [Fact]
    public void Problems_stand_by_file_in_the_order_of_reading_and_then_by_place()
    {
        var reading = Rules.Read(new RuleFilesInMemory()
            .Add("farm.byre", "use \"b.byre\"\ndefine x\n  no heet ever\ndefine y\n  (\n").Add("b.byre", "evnet heat\nmeasure weight\n"));
        reading.Problems.Select(problem => (problem.File, problem.Line)).ShouldBe([("farm.byre", 3), ("farm.byre", 5), ("b.byre", 1), ("b.byre", 2)]);
    }
}
