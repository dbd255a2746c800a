namespace Byrelaw.Cli.Tests;

/// <summary><c>--records-to</c> is a person's word for one run: it stands for every <c>up to</c>, is said with the last entries, kept in the log, and judged again.</summary>
public sealed class RecordsReachTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void It_stands_for_every_up_to_and_is_kept()
    {
        _farm.Run("draft", "spring.byre", "--format", "json").Out.ShouldContain("\"known_day\": \"2026-09-20\"");
        var run = _farm.Run("draft", "spring.byre", "--records-to", "2026-09-21");

        run.Err.ShouldContain("Up to 21 September 2026 all is written down by your word (--records-to). Last entry: events.csv 18 September 2026.\n");
        run.Out.ShouldContain("records to 21 September 2026");
        var lines = File.ReadAllLines(_farm.At("judging-log.jsonl"));
        lines[0].ShouldNotContain("records_to");
        lines[1].ShouldContain("\"known_day\":\"2026-09-21\"");
        lines[1].ShouldContain("\"records_to\":\"2026-09-21\"");
        _farm.Run("verify", "out").Code.ShouldBe(ExitCode.Done, "the same word, the same answers");
        File.ReadAllText(_farm.At("out/draft.json")).ShouldContain("\"records_to\": \"2026-09-21\"");
        _farm.Run("check", "spring.byre").Code.ShouldBe(ExitCode.Done, "the log is whole");
    }

    [Theory]
    [InlineData("why", "spring.byre", "1007")]
    [InlineData("records", "records", "--rules", "spring.byre")]
    [InlineData("plan", "spring.byre")]
    public void Other_commands_take_it_too(params string[] command) =>
        _farm.Run([.. command, "--records-to", "2026-09-21"]).Err.ShouldContain("Up to 21 September 2026 all is written down by your word (--records-to).");

    [Fact]
    public void A_day_to_come_is_refused() => _farm.Run("draft", "spring.byre", "--records-to", "2027-09-25").ShouldBeOneClearLine("nobody has written down what has not happened yet");
}
