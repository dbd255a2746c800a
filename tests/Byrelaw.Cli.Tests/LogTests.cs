using Byrelaw.Reporting.Log;

namespace Byrelaw.Cli.Tests;

/// <summary>What was judged stands in a log beside the programme.</summary>
public sealed class LogTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_draft_and_a_plan_add_a_line_each_and_questions_add_none()
    {
        _farm.Run("draft", "spring.byre").Out.ShouldContain("In the log: judging-log.jsonl, number 1, sha256:");
        _farm.Run("plan", "spring.byre", "--by", "the adviser").Out.ShouldContain("In the log: judging-log.jsonl, number 2, sha256:");
        _farm.Run("why", "spring.byre", "1007");
        _farm.Run("compare", "spring.byre", "spring.byre", "--records", "records");
        _farm.Run("check", "spring.byre");
        var lines = File.ReadAllLines(_farm.At(JudgingLog.FileName));
        Snapshot.Verify(Without.Digests(string.Concat(lines.Select(line => line + "\n"))), extension: "jsonl");
    }

    [Fact]
    public void The_line_says_by_what_was_judged_and_what_it_came_to()
    {
        _farm.Run("draft", "spring.byre", "--known-on", "2026-09-10");
        var json = JsonDocument.Parse(_farm.Run("draft", "spring.byre", "--known-on", "2026-09-10", "--format", "json").Out).RootElement;
        var line = JsonDocument.Parse(File.ReadLines(_farm.At(JudgingLog.FileName)).First()).RootElement;
        foreach (var key in new[] { "judged_with", "rulebook", "records", "known_day" })
        {
            line.GetProperty(key).GetString().ShouldBe(json.GetProperty(key).GetString());
        }

        line.GetProperty("known_on").GetString().ShouldBe("2026-09-10");
        line.GetProperty("lists")[0].GetProperty("ask").GetInt32().ShouldBe(json.GetProperty("lists")[0].GetProperty("counts").GetProperty("ask").GetInt32());
    }

    [Fact]
    public void Reports_are_the_same_to_the_letter_whenever_they_are_drawn_up()
    {
        _farm.Run("draft", "spring.byre", "--out", "a");
        _farm.Clock.Now = _farm.Clock.Now.AddDays(400);
        _farm.Run("draft", "spring.byre", "--out", "b", "--by", "somebody");
        foreach (var file in Directory.EnumerateFiles(_farm.At("a"), "*", SearchOption.AllDirectories))
        {
            File.ReadAllBytes(_farm.At("b/" + Path.GetRelativePath(_farm.At("a"), file))).ShouldBe(File.ReadAllBytes(file), file);
        }

        var answers = File.ReadLines(_farm.At(JudgingLog.FileName)).Select(line => JsonDocument.Parse(line).RootElement.GetProperty("answers").GetString());
        answers.Distinct().Count().ShouldBe(1);
    }

    [Fact]
    public void Check_says_which_line_was_changed_and_ends_with_1()
    {
        _farm.Run("draft", "spring.byre");
        _farm.Clock.Now = _farm.Clock.Now.AddDays(1);
        _farm.Run("draft", "spring.byre");
        var whole = _farm.Run("check", "spring.byre");
        whole.Code.ShouldBe(ExitCode.Done);
        whole.Out.ShouldContain("judging-log.jsonl: 2 judgings, no line changed or missing; ends with sha256:");

        _farm.Change(JudgingLog.FileName, "2026-09-21T06", "2026-09-21T05");
        var changed = _farm.Run("check", "spring.byre");
        changed.Code.ShouldBe(ExitCode.Bad);
        Snapshot.Verify(Without.Digests(changed.ToString()));

        var further = _farm.Run("draft", "spring.byre");
        further.Code.ShouldBe(ExitCode.Done);
        further.Err.ShouldBe("judging-log.jsonl is not as it was written; byrelaw check spring.byre says where. The log goes on all the same.\n");
    }

    [Fact]
    public void A_hash_that_was_noted_shows_a_log_that_was_cut_or_is_gone()
    {
        _farm.Run("draft", "spring.byre");
        var one = File.ReadAllText(_farm.At(JudgingLog.FileName));
        var said = _farm.Run("draft", "spring.byre").Out;
        var hash = said[said.LastIndexOf("sha256:", StringComparison.Ordinal)..].TrimEnd('\n');
        _farm.Run("check", "spring.byre", "--log-hash", hash).Code.ShouldBe(ExitCode.Done);

        _farm.Write(JudgingLog.FileName, one);
        _farm.Run("check", "spring.byre").Code.ShouldBe(ExitCode.Done);
        var cut = _farm.Run("check", "spring.byre", "--log-hash", hash);
        cut.Code.ShouldBe(ExitCode.Bad);
        cut.Err.ShouldContain($"judging-log.jsonl:1:1: error L0106: no line has the hash {hash}");

        File.Delete(_farm.At(JudgingLog.FileName));
        _farm.Run("check", "spring.byre", "--log-hash", hash).Err.ShouldContain("L0106");
    }

    [Fact]
    public void Half_a_line_is_told_and_does_not_stop_the_work()
    {
        _farm.Run("draft", "spring.byre");
        File.AppendAllText(_farm.At(JudgingLog.FileName), "{\"number\":2,\"at\":\"20");
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Done);
        run.Err.ShouldBe("The last line of judging-log.jsonl is only half there, as after a crash; the log goes on below it.\n");
        run.Out.ShouldContain("judging-log.jsonl, number 2, ");
        _farm.Run("draft", "spring.byre").Err.ShouldBeEmpty();
        _farm.Run("check", "spring.byre").Err.ShouldContain("judging-log.jsonl:2:1: warning L0104");
    }

    [Fact]
    public void Where_no_log_can_be_kept_the_draft_stands_all_the_same()
    {
        Directory.CreateDirectory(_farm.At(JudgingLog.FileName));
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Done);
        run.Err.TrimEnd('\n').ShouldNotContain('\n');
        run.Err.ShouldStartWith("This is not in the log of judging, which cannot be kept here: ");
        run.Out.ShouldEndWith("The lists and a page for every animal: out/index.html\n");
        File.Exists(_farm.At("out/index.html")).ShouldBeTrue();
        _farm.Run("check", "spring.byre").Code.ShouldBe(ExitCode.Done);
    }
}
