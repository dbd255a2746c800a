using Byrelaw.LanguageServer.Readings;

namespace Byrelaw.LanguageServer.Tests.Protocol;

public sealed class ChangedLinesTests
{
    private const string Then = "one\ntwo\nthree\nfour\n";

    [Theory]
    [InlineData(Then, "0 1 2 3")]
    [InlineData("one\ntwo\nthre\nfour\n", "0 1 - 3")]
    [InlineData("one\nand\ntwo\nthree\nfour\n", "0 2 3 4")]
    [InlineData("zero\none\ntwo\nthree\nfour\n", "1 2 3 4")]
    [InlineData("one\nfour\n", "0 - - 1")]
    [InlineData("one\ntwo\nthree\nfour\nfive\n", "0 1 2 3")]
    [InlineData("one\ntwo\nthree three\nfour\n", "0 1 - 3")]
    [InlineData("", "- - - -")]
    public void A_line_that_stays_is_followed_and_one_that_changed_is_not(string now, string lines)
    {
        var changed = new ChangedLines(Then, now);
        var moved = Enumerable.Range(0, 4).Select(line => changed.Moves(new(new Position(line, 0), new Position(line, 3)))?.Start.Line.ToString() ?? "-");
        string.Join(' ', moved).ShouldBe(lines);
    }
}
