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

    [Fact]
    public void From_a_farms_own_files_it_judges_at_once_and_asks_about_what_nobody_said()
    {
        Directory.CreateDirectory(_farm.At("export/lab"));
        _farm.Write("export/cows.csv", "Line No;DOB;Calved\n301;09/02/2020;02/08/2026\n302;17/08/2021;11/08/2026\n303;20/03/2021;25/07/2026\n");
        _farm.Write("export/diary.csv", "Date;Line No;Code\n20/08/2026;301;AI\n29/08/2026;302;lameness\n29/08/2026;301;LMN\n");
        _farm.Write("export/lab/blood.csv", "Line No,Sampled,Cu\n301,2026-08-01,11\n302,2026-08-01,12\n");
        var run = _farm.Run("new", "Stony Field", "--from", "export");
        run.Code.ShouldBe(ExitCode.Done, run.Err);
        Snapshot.Verify(run.Out, "from");
        Snapshot.Verify(Programme("Stony Field"), "from", "byre");
        File.ReadAllText(_farm.At("Stony Field/records/lab/blood.csv")).ShouldBe(File.ReadAllText(_farm.At("export/lab/blood.csv")));

        // The one line without which nobody is on any list; all else stays open.
        _farm.Change("Stony Field/programme.byre", "# ? sex is F", "sex is F");
        _farm.Run("check", "Stony Field/programme.byre").Code.ShouldBe(ExitCode.Bad);
        var draft = _farm.Run("draft", "Stony Field/programme.byre", "--out", "out");
        draft.Code.ShouldBe(ExitCode.Bad);
        JsonDocument.Parse(File.ReadAllText(_farm.At("out/draft.json"))).RootElement.GetProperty("lists").EnumerateArray()
            .ShouldAllBe(list => list.GetProperty("counts").GetProperty("ready").GetInt32() == 0 && list.GetProperty("counts").GetProperty("on_course").GetInt32() == 0);
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_told_of_and_where_none_can_nothing_is_made()
    {
        Directory.CreateDirectory(_farm.At("export"));
        _farm.Write("export/herd.pdf", "%PDF-1.4 of cows;1;2\n");
        _farm.Run("new", "farm", "--from", "export").ShouldBeOneClearLine("herd.pdf: no text that can be read");
        Directory.Exists(_farm.At("farm")).ShouldBeFalse();
        _farm.Write("export/cows.csv", "Line No;DOB\n301;09/02/2020\n302;17/08/2021\n");
        File.WriteAllBytes(_farm.At("export/old.csv.gz"), [0x1F, 0x8B, 8, 0, 0, 0, 0, 0, 0, 0, 1, 2]);
        var run = _farm.Run("new", "farm", "--from", "export");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldContain("reads those that can be read");
        run.Err.ShouldBe("  Not read: herd.pdf: no text that can be read: a list that byrelaw can read is a CSV or another text file, or a workbook (.xlsx)\n  Not read: old.csv.gz: it is packed, and breaks off or is damaged: export it again\n");
    }

    [Fact]
    public void From_nothing_nothing_is_made()
    {
        _farm.Run("new", "farm", "--from", "nowhere").ShouldBeOneClearLine("no such folder: nowhere");
        _farm.Run("new", "farm", "--from", "spring.byre").ShouldBeOneClearLine("is a file");
        Directory.CreateDirectory(_farm.At("empty"));
        _farm.Run("new", "farm", "--from", "empty").ShouldBeOneClearLine("there is no file in empty");
        _farm.Run("new", "records/farm", "--from", "records").ShouldBeOneClearLine("would lie in records");
        Directory.Exists(_farm.At("farm")).ShouldBeFalse();
    }

    private string Programme(string folder) => File.ReadAllText(_farm.At($"{folder}/programme.byre"));
}
