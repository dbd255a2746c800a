using Byrelaw.Records.Ledger;

namespace Byrelaw.Cli.Tests.Sheets;

/// <summary>A morning's sheets: numbered, with boxes, known of in the ledger; a preview where the records do not reach.</summary>
public sealed class SheetTests : IDisposable
{
    private readonly TwoCows _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_morning_reads_as_approved()
    {
        var run = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        var number = Ledger().Sheets[0].Number;
        number.ShouldMatch("^H1004-[0-9a-f]{6}$");
        Snapshot.Verify(Without.Digests(run.ToString()) + "\n--- as CSV\n" + File.ReadAllText(_farm.Farm.At($"sheets/{number}.csv")).ReplaceLineEndings("\n") + "\n--- the page\n" + File.ReadAllText(_farm.Farm.At($"sheets/{number}.md")));
        Directory.GetFiles(_farm.Farm.At("sheets")).Select(Path.GetExtension).Order().ShouldBe([".csv", ".html", ".md", ".xlsx"]);
        File.ReadAllText(_farm.Farm.At($"sheets/{number}.html")).ShouldContain("class=\"tick\"");
    }

    [Fact]
    public void Whoever_stands_on_it_is_in_doubt_from_now_on_and_looking_at_a_plan_puts_nobody_in_doubt()
    {
        _farm.Farm.Run("plan", "spring.byre").Code.ShouldBe(ExitCode.Done);
        _farm.Treatment().ShouldBe("6 no, 7 on_course, 8 on_course, 9 on_course");
        var number = _farm.Draw();
        _farm.Treatment().ShouldBe("6 no, 7 ask, 8 ask, 9 ask");
        var draft = _farm.Farm.Run("draft", "spring.byre");
        draft.Out.ShouldContain($"Sheet {number} is open: rows 1, 2 and 3.");
        draft.Out.ShouldContain("Devices in: 7, 8 and 9 since 4 October 2026.", customMessage: "a device that may have gone in counts as in");
    }

    [Fact]
    public void Whoever_stands_on_it_keeps_her_place_and_is_to_ask_until_it_is_recorded_and_a_spare_has_none()
    {
        var number = _farm.Draw();
        using var plan = System.Text.Json.JsonDocument.Parse(_farm.Farm.Run("plan", "spring.byre", "--format", "json").Out);
        var session = plan.RootElement.GetProperty("sessions")[0];
        session.GetProperty("named").GetArrayLength().ShouldBe(0);
        session.GetProperty("to_ask").EnumerateArray().Select(one => one.GetProperty("animal").GetString()).ShouldBe(["7", "8"]);
        _farm.Farm.Run("plan", "spring.byre");
        File.ReadAllText(_farm.Farm.At("out-plan/index.md")).ShouldContain($"7 (row 1 of sheet {number}) and 8 (row 2 of sheet {number})");
    }

    [Fact]
    public void The_same_sheet_again_is_the_same_number_and_no_new_line_and_what_is_filled_in_is_left_alone()
    {
        var number = _farm.Draw();
        var ledger = File.ReadAllText(_farm.Farm.At("records/sheets.jsonl"));
        _farm.Fill(number, (1, "done", "yes"));
        var filled = File.ReadAllText(_farm.Farm.At($"sheets/{number}.csv"));
        var again = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        again.Out.ShouldContain($"sheets/{number}.csv is filled in already, and was left as it is.");
        again.Out.ShouldNotContain("Replaces");
        File.ReadAllText(_farm.Farm.At("records/sheets.jsonl")).ShouldBe(ledger);
        File.ReadAllText(_farm.Farm.At($"sheets/{number}.csv")).ShouldBe(filled);
    }

    [Fact]
    public void Drawn_again_it_makes_the_earlier_one_void_and_says_so_and_who_is_not_on_it_any_more_stands_below()
    {
        var first = _farm.Draw();
        _farm.Farm.Append("records/events.csv", "2026-10-03,8,mating,,,the neighbour's bull\n");
        var run = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        run.Out.ShouldContain($"Replaces {first}: if that was used, record it first.");
        run.Out.ShouldContain("Taken off");
        var (ledger, second) = (Ledger(), Ledger().Sheets[1]);
        second.Replaces.ShouldBe([first]);
        second.Rows.Select(row => row.Animal).ShouldBe(["7", "9", "8"]);
        _farm.Sheet(second.Number)[^1].ShouldContain($"taken off {first}:");
        _farm.Treatment().ShouldBe("6 no, 7 ask, 8 no, 9 ask");
        ledger.IsBroken.ShouldBeFalse();
    }

    [Fact]
    public void Records_that_end_a_day_early_give_a_preview_until_somebody_says_that_nothing_more_happened()
    {
        _farm.Farm.Change("spring.byre", "up to 2026-10-03", "up to 2026-10-02");
        var early = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        early.Code.ShouldBe(ExitCode.Bad, early.ToString());
        early.Out.ShouldContain("transfer");
        early.Out.ShouldContain("to 2 October 2026: so far, and no further, is written down what the safety rules look at. A box for a hormone wants all of it up to 3 October 2026.");
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
        var preview = File.ReadAllText(_farm.Farm.At("sheets/preview-2026-10-04-session-1-hormones.md"));
        preview.ShouldContain("A preview: it has no boxes");
        preview.ShouldNotContain("☐");
        preview.ShouldNotContain("H1004");
        var run = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04", "--records-to", "2026-10-03");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain("records to 3 October 2026, said for this run");
        Ledger().Sheets.Length.ShouldBe(1);
    }

    [Theory]
    [InlineData("2026-10-03", "2026-10-03 is over; today is 2026-10-04. What was done then is recorded")]
    [InlineData("2026-10-04", "--today does not go with a sheet", "--today", "2026-10-04")]
    [InlineData("2026-10-04", "--known-on does not go with a sheet", "--known-on", "2026-10-04")]
    [InlineData("2026-10-04", "--heard-on does not go with a sheet", "--heard-on", "2026-10-04")]
    [InlineData("2026-10-04", "give --sheet or --rehearse, not both", "--rehearse", "2026-10-04")]
    public void What_cannot_be_drawn_is_refused(string day, string said, params string[] more)
    {
        _farm.Farm.Run(["plan", "spring.byre", "--sheet", day, .. more]).ShouldBeOneClearLine(said);
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
    }

    [Fact]
    public void A_sheet_of_next_week_is_a_preview()
    {
        _farm.On(2026, 9, 26);
        _farm.Farm.Change("spring.byre", "up to 2026-10-03", "up to 2026-09-26");
        var run = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldContain("what is ticked on a paper of next week stays ticked");
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
    }

    [Fact]
    public void A_rehearsal_stands_in_no_ledger_and_says_so_on_every_page()
    {
        _farm.On(2026, 8, 1);
        var run = _farm.Farm.Run("plan", "spring.byre", "--rehearse", "2026-10-04");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
        File.Exists(_farm.Farm.At("judging-log.jsonl")).ShouldBeFalse();
        string[] pages = [.. Directory.GetFiles(_farm.Farm.At("sheets"), "*.md"), .. Directory.GetFiles(_farm.Farm.At("sheets"), "*.html")];
        pages.Length.ShouldBe(2);
        foreach (var page in pages)
        {
            File.ReadAllText(page).ShouldContain("REHEARSAL: nobody is to be handled or given anything by this paper.");
        }

        Directory.GetFiles(_farm.Farm.At("sheets"), "*.csv").Length.ShouldBe(1);
        File.ReadAllText(Directory.GetFiles(_farm.Farm.At("sheets"), "*.csv")[0]).ShouldContain("REHEARSAL H1004-");
    }

    [Fact]
    public void A_ledger_that_was_changed_is_not_added_to()
    {
        _farm.Draw();
        _farm.Farm.Change("records/sheets.jsonl", "\"animal\":\"8\"", "\"animal\":\"6\"");
        var run = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("no sheet is written. The ledger of sheets was changed");
    }

    private SheetLedger Ledger() => SheetLedger.In(_farm.Farm.At("records"))!;
}
