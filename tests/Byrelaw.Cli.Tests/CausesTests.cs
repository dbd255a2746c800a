namespace Byrelaw.Cli.Tests;

/// <summary>What is wrong with the rows of records is told by its cause, with one mend for all rows, and which promises would open how much.</summary>
public sealed class CausesTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void Many_rows_of_one_word_are_one_cause_and_what_keeps_most_animals_comes_first()
    {
        _farm.Append("records/events.csv", "2026-09-01,1007,hoof trim,,,,\n2026-09-01,1012,hoof trim,,,,\n2026-09-02,1019,hoof trim,,,,\n2026-09-03,1033,hoof trim,,,,\n2026-09-04,1423,hoof trim,,,,\n"
            + "2026-13-01,1007,calving,,,,\n2026-13-02,1012,calving,,,,\n2026-09-05,9999,calving,,,,\n2026-09-05,9998,calving,,,,\n");
        var run = _farm.Run("records", "records");
        run.Code.ShouldBe(ExitCode.Bad);
        Snapshot.Verify(run.ToString());

        var json = JsonDocument.Parse(_farm.Run("records", "records", "--format", "json").Out).RootElement;
        json.GetProperty("causes").EnumerateArray().Sum(cause => cause.GetProperty("rows").GetInt32()).ShouldBe(json.GetProperty("problems").GetArrayLength());
        json.GetProperty("causes")[0].GetProperty("mend").GetString().ShouldNotBeNull();
    }

    [Fact]
    public void The_report_tells_them_by_cause_and_every_row_stands_in_a_file_beside_it()
    {
        _farm.Append("records/events.csv", string.Concat(Enumerable.Range(1, 14).Select(word => $"2026-09-01,1007,word {(char)('a' + word)},,,,\n2026-09-02,1012,word {(char)('a' + word)},,,,\n")));
        var run = _farm.Run("draft", "spring.byre", "--out", "out");
        run.Err.ShouldContain("And 4 more causes, of 8 rows");
        File.ReadAllLines(_farm.At("out/problems.csv")).Length.ShouldBe(1 + 28);
        var page = File.ReadAllText(_farm.At("out/recipients/index.md"));
        page.ShouldContain("2 rows, 2 animals in all");
        page.ShouldContain("Every row stands in problems.csv.");
    }

    [Fact]
    public void Days_written_in_one_way_are_one_cause_whatever_the_month()
    {
        _farm.Append("records/events.csv", "1 Sep 2026,1007,calving,,,,\n2 May 2026,1012,calving,,,,\n13 August 2026,1019,calving,,,,\n2026-13-01,1033,calving,,,,\n");
        var causes = JsonDocument.Parse(_farm.Run("records", "records", "--format", "json").Out).RootElement.GetProperty("causes").EnumerateArray();
        causes.Where(cause => cause.GetProperty("code").GetString() == "R0121").Select(cause => cause.GetProperty("rows").GetInt32()).ShouldBe([3, 1], ignoreOrder: true);
    }

    [Fact]
    public void A_word_that_may_be_a_service_is_offered_as_another_name_of_one_first()
    {
        _farm.Append("vocabulary.byre", "hint AI may be mating\n");
        _farm.Append("records/events.csv", "2026-09-01,1007,AI,,,,\n");
        _farm.Run("records", "records").Err.ShouldContain("if it means mating, say so: `call mating also AI`");
    }

    [Fact]
    public void Promises_are_weighed_by_what_they_would_open_and_what_the_records_say_to_them()
    {
        _farm.Change("spring.byre", "  complete for calving, mating, transfer, drying off, purchase, pregnancy test, bull in, bull out since 2020-01-01\n", "");
        var run = _farm.Run("records", "records", "--promises");
        run.Code.ShouldBe(ExitCode.Done, run.Err);
        Snapshot.Verify(run.Out);
        _farm.Run("records", "records", "--promises", "--rules", "vocabulary.byre").ShouldBeOneClearLine("draws up no list");
    }
}
