namespace Byrelaw.Workshop.Tests.Tidying;

/// <summary>The proof sees whatever a printer could lose.</summary>
public sealed class ProofTests
{
    private const string Text =
        """
        # above
        use "words.byre"
        records "records"
          complete for heat since 2024-06-01
        rules for cows
        rule "A"
          needs no heat in the last 30 days  # beside
          because "b"
          source "s"
        example "E"
          day 0 "Look at her"

        """;

    [Theory]
    [InlineData("30 days", "31 days", "what the rules say")]
    [InlineData("\"b\"", "\"c\"", "what the rules say")]
    [InlineData("  source \"s\"\n", "", "what the rules say")]
    [InlineData("2024-06-01", "2024-06-02", "what the rules say")]
    [InlineData("# beside", "", "its comments")]
    [InlineData("# above", "# Above", "its comments")]
    [InlineData("\"words.byre\"", "\"others.byre\"", "words that are not part of the rules")]
    [InlineData("\"records\"", "\"elsewhere\"", "words that are not part of the rules")]
    [InlineData("day 0", "day 1", "words that are not part of the rules")]
    [InlineData("  day 0 \"Look at her\"\n", "", "words that are not part of the rules")]
    public void A_change_is_seen(string from, string to, string what)
    {
        Text.ShouldContain(from);
        Proof.Difference(Of(Text), Of(Text.Replace(from, to, StringComparison.Ordinal))).ShouldBe(what);
    }

    [Fact]
    public void Layout_is_no_change() =>
        Proof.Difference(Of(Text), Of(Text.Replace("  ", "\t", StringComparison.Ordinal).Replace("30 days", "30   Days", StringComparison.Ordinal))).ShouldBeNull();

    private static Proof Of(string text)
    {
        var files = new RuleFilesInMemory().Add("farm.byre", text).Add("words.byre", "event heat\n").Add("others.byre", "event heat\n");
        return Proof.Of(RulebookReader.Read("farm.byre", files)!);
    }
}
