namespace Byrelaw.Cli.Tests;

public sealed class NewTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_new_folder_says_what_to_fill_in()
    {
        var run = _farm.Run("new", "Withy Bend");
        run.Code.ShouldBe(ExitCode.Done);
        Snapshot.Verify(run.Out, "answers");
        Snapshot.Verify(Programme("Withy Bend"), "programme", "byre");
        File.ReadAllText(_farm.At("Withy Bend/records/events.csv")).ShouldBe("date,animal,kind,value,unit,note,recorded\n");
    }

    [Fact]
    public void The_headings_have_a_column_for_every_fact_that_the_base_rules_may_ask_for()
    {
        _farm.Run("new", "farm");
        var columns = File.ReadAllText(_farm.At("farm/records/animals.csv")).TrimEnd('\n').Split(',');
        columns.Take(7).ShouldBe(["animal", "official_id", "born", "sex", "breed", "mob", "parity"]);
        var declared = File.ReadLines(Repository.At("rulesets/vocabulary.byre")).Where(line => line.StartsWith("fact ", StringComparison.Ordinal))
            .Select(line => line["fact ".Length..].Split("  ")[0].Trim()).ToList();
        declared.Count.ShouldBeGreaterThan(5);
        declared.Where(fact => fact is not ("official identity" or "breed")).ShouldBe(columns.Skip(7));
    }

    [Fact]
    public void Until_it_is_filled_in_check_points_at_every_place_and_then_it_passes()
    {
        _farm.Run("new", "farm").Code.ShouldBe(ExitCode.Done);
        var text = File.ReadAllText(_farm.At("farm/programme.byre"));
        var open = text.Split('\n').Select((line, i) => (line, Number: i + 1)).Where(line => line.line.Contains(NewFarm.FillIn, StringComparison.Ordinal) && !line.line.TrimStart().StartsWith('#')).ToList();
        open.Count.ShouldBe(4);
        var unfilled = _farm.Run("check", "farm/programme.byre");
        unfilled.Code.ShouldBe(ExitCode.Bad);
        open.ShouldAllBe(line => unfilled.Err.Contains($"farm/programme.byre:{line.Number}:", StringComparison.Ordinal));

        _farm.Write("farm/programme.byre", text.Replace(NewFarm.FillIn, "2026-09-21", StringComparison.Ordinal));
        var filled = _farm.Run("check", "farm/programme.byre");
        filled.Code.ShouldBe(ExitCode.Done, filled.Err);
        _farm.Run("records", "farm/records").Code.ShouldBe(ExitCode.Done);
        _farm.Run("draft", "farm/programme.byre", "--out", "farm/out").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void Every_line_with_a_question_mark_can_be_taken()
    {
        _farm.Run("new", "farm").Code.ShouldBe(ExitCode.Done);
        var lines = File.ReadAllLines(_farm.At("farm/programme.byre"));
        lines.Count(line => line.TrimStart().StartsWith("# ? ", StringComparison.Ordinal)).ShouldBe(12);
        _farm.Write("farm/programme.byre", string.Join('\n', lines).Replace("# ? ", "", StringComparison.Ordinal).Replace(NewFarm.FillIn, "2026-09-21", StringComparison.Ordinal));
        var run = _farm.Run("check", "farm/programme.byre");
        run.Code.ShouldBe(ExitCode.Done, run.Err);
    }

    [Fact]
    public void Nothing_is_ever_overwritten()
    {
        _farm.Run("new", "records").ShouldBeOneClearLine("is not empty; nothing was changed");
        _farm.Run("new", "spring.byre").ShouldBeOneClearLine("is a file; nothing was changed");
        Directory.CreateDirectory(_farm.At("empty"));
        _farm.Run("new", "empty").Code.ShouldBe(ExitCode.Done);
        _farm.Run("new", "empty").ShouldBeOneClearLine("is not empty");
    }

    [Fact]
    public void A_folder_named_with_quotes_gives_a_programme_that_can_be_read()
    {
        _farm.Run("new", "the \"old\" farm").Code.ShouldBe(ExitCode.Done);
        _farm.Write("the \"old\" farm/programme.byre", File.ReadAllText(_farm.At("the \"old\" farm/programme.byre")).Replace(NewFarm.FillIn, "2026-09-21", StringComparison.Ordinal));
        var run = _farm.Run("check", "the \"old\" farm/programme.byre");
        run.Code.ShouldBe(ExitCode.Done, run.Err);
    }

    /// <summary>The programme's text with the way to the base rules, which differs from machine to machine, made short.</summary>
    private string Programme(string folder) =>
        System.Text.RegularExpressions.Regex.Replace(File.ReadAllText(_farm.At($"{folder}/programme.byre")), "\"[./]*[^\"]*rulesets/", "\"RULESETS/");
}
