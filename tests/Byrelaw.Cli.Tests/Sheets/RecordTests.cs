using Byrelaw.Records.Ledger;

namespace Byrelaw.Cli.Tests.Sheets;

/// <summary>Stories of sheets that come back, or do not: nobody on any of them is offered a hormone or an embryo wrongly, and each closes with what a farmer would do.</summary>
public sealed class RecordTests : IDisposable
{
    private const string InDoubt = "6 no, 7 ask, 8 ask, 9 ask";

    private readonly TwoCows _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_morning_that_is_written_down_reads_as_approved()
    {
        var number = _farm.Draw();
        _farm.On(2026, 10, 5);
        var file = _farm.Fill(number, (1, "done", "yes"), (1, "hormone given: batch", "A-17"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "not needed"));
        var run = Record(file);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        Snapshot.Verify(run + "\n--- events.csv\n" + _farm.Events + "\n--- recorded.csv\n" + File.ReadAllText(_farm.Farm.At("records/recorded/recorded.csv")).ReplaceLineEndings("\n"));
        File.ReadAllBytes(_farm.Farm.At($"records/recorded/2026-10-05-{number}.csv")).ShouldBe(File.ReadAllBytes(_farm.Farm.At(file)));
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldNotContain("is open");
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 no, 9 on_course", "7 and 8 have a device in them, and 9 was given nothing");
    }

    [Fact]
    public void Blank_is_open_a_later_copy_adds_what_was_blank_and_the_same_again_adds_nothing()
    {
        var number = _farm.Draw();
        var first = Record(_farm.Fill(number, (1, "done", "yes")));
        first.Out.ShouldContain("Rows 2 and 3 are still open, and in doubt.");
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 ask, 9 ask");
        var events = _farm.Events;
        Record($"sheets/{number}.csv").Out.ShouldContain("no rows are written, 1 stood there before");
        _farm.Events.ShouldBe(events);

        // The rest of it, and the batch that somebody read off the box in the evening.
        var later = Record(_farm.Fill(number, (1, "hormone given: batch", "A-17"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "spare")));
        later.Out.ShouldContain("2 rows are written, 1 stood there before, 1 blank cell of those filled in.");
        later.Out.ShouldContain("Every row of the sheet is on record.");
        _farm.Events.ShouldContain("A-17");
        _farm.Events.Split('\n').Count(line => line.Contains($"{number}:1", StringComparison.Ordinal)).ShouldBe(1, "what happened once is written once");
    }

    [Fact]
    public void A_row_that_says_something_else_now_is_refused_with_both_lines_and_nothing_is_written()
    {
        var number = _farm.Draw();
        Record(_farm.Fill(number, (1, "done", "yes"), (1, "hormone given: batch", "A-17")));
        var events = _farm.Events;
        var run = Record(_farm.Fill(number, (1, "hormone given: batch", "B-20"), (2, "done", "yes")));
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("R0409");
        run.Err.ShouldContain("of records/events.csv says otherwise already: batch `A-17` there, `B-20` here");
        _farm.Events.ShouldBe(events);
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 ask, 9 ask", "2 is not written either: all or nothing");
    }

    [Fact]
    public void Left_in_the_van_for_nineteen_days_everybody_on_it_is_in_doubt_until_it_is_found()
    {
        var sheet = new Sheet("T0915-7c3e05", new(2026, 9, 15), new(2026, 9, 15), 1, "T", [], [new SheetRow(1, "7", "E-03", [new SheetEntry("transfer")]), new SheetRow(2, "8", "E-01", [new SheetEntry("transfer")])]);
        Write(SheetLedger.Of([]).With(sheet));
        _farm.Treatment().ShouldBe("6 no, 7 ask, 8 ask, 9 on_course");
        _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04");
        Ledger().Sheets[^1].Rows.Select(row => row.Animal).ShouldBe(["9"], "nobody who may be in calf has a box for a hormone");

        // Found: 7 got her embryo, 8 had no corpus luteum.
        _farm.Farm.Write("found.csv", "sheet,row,date,session,animal,done,transfer,transfer: embryo,transfer: side,transfer: operator,transfer: read by,reason,note\nT0915-7c3e05,1,2026-09-15,1,7,,yes,E-03,left,vet,farmer,,\nT0915-7c3e05,2,2026-09-15,1,8,no,,,,,,no corpus luteum,\n");
        var run = Record("found.csv");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldBe("");
        _farm.Treatment().ShouldStartWith("6 no, 7 no, 8 on_course");
    }

    [Fact]
    public void A_transfer_that_should_not_have_been_is_written_because_it_happened_and_is_told()
    {
        Write(SheetLedger.Of([]).With(new Sheet("T1004-7c3e05", new(2026, 10, 4), new(2026, 10, 4), 1, "T", [], [new SheetRow(1, "6", "E-03", [new SheetEntry("transfer")])])));
        _farm.Farm.Write("sheet.csv", "sheet,row,date,session,animal,done,transfer,transfer: embryo,transfer: side,transfer: operator,transfer: read by,reason,note\nT1004-7c3e05,1,2026-10-04,1,6,yes,,E-17,left,vet,vet,,\n");
        var run = Record("sheet.csv");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldContain("Row 1, 6, 4 October 2026: by what was known before, she did not surely pass the safety rules for an embryo");
        run.Err.ShouldContain("embryo E-17 is not the one on her line");
        run.Err.ShouldContain("nobody else read the straw back");
        _farm.Events.ShouldContain("2026-10-04,6,transfer");
    }

    [Fact]
    public void A_device_that_was_not_there_is_gone_and_no_heat_is_timed_and_the_others_heat_is()
    {
        Record(_farm.Fill(_farm.Draw(), (1, "done", "yes"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "spare")));
        _farm.On(2026, 10, 11);
        _farm.Farm.Change("spring.byre", "up to 2026-10-03", "up to 2026-10-10");
        var number = _farm.Draw("2026-10-11");
        _farm.Sheet(number)[1].ShouldContain(",out");
        var run = Record(_farm.Fill(number, (1, "done", "yes"), (2, "done", "yes"), (2, "hormone given: device", "gone")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain("7: no timed heat is written, for its day, 13 October 2026, is to come: it is written with the next sheet that is recorded from then on.", customMessage: run.ToString());
        run.Out.ShouldContain("8: no timed heat is written, for nobody says that her device was there when it was taken out.");
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldContain("Devices in: none");

        _farm.On(2026, 10, 14);
        _farm.Farm.Write("vet.csv", "animal,date,pregnancy test,pregnancy test: method,pregnancy test: done by\n6,2026-10-14,empty,ultrasound,vet\n");
        var later = Record("vet.csv");
        later.Out.ShouldContain("7: timed heat on 13 October 2026, after day 0 and day 7 of Insert.", customMessage: later.ToString());
        later.Out.ShouldNotContain("8: ");
        _farm.Events.ShouldContain("2026-10-13,7,timed heat");
    }

    [Fact]
    public void A_device_comes_out_though_nothing_is_given()
    {
        Record(_farm.Fill(_farm.Draw(), (1, "done", "yes"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "spare")));
        _farm.On(2026, 10, 11);
        _farm.Farm.Change("spring.byre", "up to 2026-10-03", "up to 2026-10-10");
        var run = Record(_farm.Fill(_farm.Draw("2026-10-11"), (1, "done", "yes"), (1, "hormone given", "no"), (1, "reason", "in heat and in doubt"), (2, "done", "yes")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain("7: no timed heat is written, for the step of day 7 is not on record on its day.");
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldContain("Devices in: none");
    }

    [Fact]
    public void A_scan_without_its_method_or_who_did_it_is_refused_and_a_tick_is_no_scan()
    {
        Write(SheetLedger.Of([]).With(new Sheet("S1004-aa01bc", new(2026, 10, 4), new(2026, 10, 4), 1, "S", [], [new SheetRow(1, "6", null, [new SheetEntry("pregnancy test")])])));
        string Sheet(string cells) => $"sheet,row,date,session,animal,done,pregnancy test,pregnancy test: method,pregnancy test: done by,reason,note\nS1004-aa01bc,1,2026-10-04,1,6,{cells}\n";
        _farm.Farm.Write("s.csv", Sheet(",empty,,,,"));
        Record("s.csv").Err.ShouldContain("a pregnancy test without its method");
        _farm.Farm.Write("s.csv", Sheet("yes,,ultrasound,vet,,"));
        var tick = Record("s.csv");
        tick.Out.ShouldContain("A tick is no pregnancy test: nothing is written of it in row 1 until an answer stands there.");
        _farm.Events.ShouldNotContain("pregnancy test");
        _farm.Farm.Write("s.csv", Sheet(",empty,ultrasound,vet,,"));
        Record("s.csv").Out.ShouldContain("Every row of the sheet is on record.");
        _farm.Events.ShouldContain("2026-10-04,6,pregnancy test,empty");
    }

    [Fact]
    public void What_was_done_a_day_late_closes_its_row_and_is_told_and_one_that_is_to_come_is_refused()
    {
        var number = _farm.Draw();
        _farm.On(2026, 10, 7);
        Record(_farm.Fill(number, (1, "done", "yes"), (1, "date", "2026-10-08"))).Err.ShouldContain("2026-10-08 is to come");
        var run = Record(_farm.Fill(number, (1, "date", "2026-10-05"), (2, "done", "yes"), (2, "date", "2026-10-07"), (3, "done", "no"), (3, "reason", "spare")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldContain("Row 1, 7, 5 October 2026: that is another day than the sheet's");
        run.Err.ShouldContain("Row 2, 8, 7 October 2026: that is another day than the sheet's");
        run.Out.ShouldContain("Every row of the sheet is on record.");
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldContain("Devices in: 7 since 5 October 2026, 8 since 7 October 2026.");
    }

    [Fact]
    public void No_sheet_was_done_before_it_was_written()
    {
        var number = _farm.Draw();
        _farm.On(2026, 10, 7);
        var run = Record(_farm.Fill(number, (1, "done", "yes"), (1, "date", "2025-10-04"), (2, "done", "yes")));
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain($"sheet {number} was not written before 2026-10-04, and this row says 2025-10-04");
        _farm.Events.ShouldNotContain("hormone given");
        _farm.Treatment().ShouldBe(InDoubt, "a year that was mistyped closes nothing");
    }

    [Fact]
    public void A_sheet_that_is_drawn_again_after_the_first_was_not_done_is_another_and_open()
    {
        var first = _farm.Draw();
        Run("record", "spring.byre", first, "--not-done", "rain").Code.ShouldBe(ExitCode.Done);
        _farm.Treatment().ShouldBe("6 no, 7 on_course, 8 on_course, 9 on_course");
        var second = _farm.Draw();
        second.ShouldNotBe(first);
        _farm.Draw().ShouldBe(second, "nothing is said of it yet, so it is the same sheet");
        _farm.Treatment().ShouldBe(InDoubt, "the second paper may be in use");
        var run = Record(_farm.Fill(second, (1, "done", "yes"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "spare")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 no, 9 on_course");
    }

    [Theory]
    [InlineData("animal,date,transfer,transfer: embryo,transfer: side\n7,2026-10-01,,E7,left\n", "`transfer: embryo` is filled in, and nothing stands under `transfer`")]
    [InlineData("animal,date,transfer: embryo,transfer: side\n7,2026-10-01,E7,left\n", "`transfer: embryo` is filled in, and nothing stands under `transfer`")]
    [InlineData("animal,date,done,transfer\n7,2026-10-01,yes,\n", "`yes` under `done`, and nothing says of what")]
    public void A_vets_own_row_that_does_not_say_whether_it_was_done_is_refused_and_she_is_in_doubt(string rows, string told)
    {
        _farm.Farm.Write("vet.csv", rows);
        var run = Record("vet.csv");
        run.Code.ShouldBe(ExitCode.Bad, run.ToString());
        run.Err.ShouldContain(told);
        _farm.Treatment().ShouldStartWith("6 no, 7 ask, 8 on_course");
    }

    [Fact]
    public void A_heading_that_was_mistyped_is_mended_where_the_file_lies_and_every_row_closes()
    {
        _farm.Farm.Write("vet.csv", "animal,date,pregnacy test,pregnancy test: method,pregnancy test: done by\n8,2026-10-04,empty,ultrasound,vet\n");
        var refused = Record("vet.csv");
        refused.Err.ShouldContain("no rule file declares `pregnacy test`");
        refused.Err.ShouldNotContain("R0406", Case.Sensitive, "below that heading it may well be said");
        var kept = $"records/recorded/2026-10-04-{Ledger().Sheets.ShouldHaveSingleItem().Number}-refused.csv";
        _farm.Farm.Change(kept, "pregnacy", "pregnancy");
        Record(kept).Code.ShouldBe(ExitCode.Done);
        _farm.Treatment().ShouldBe("6 no, 7 on_course, 8 on_course, 9 on_course");
    }

    [Fact]
    public void A_void_sheet_that_comes_back_is_recorded_with_a_warning_and_closes_the_new_ones_row_of_whoever_was_treated()
    {
        var first = _farm.Draw();
        _farm.Farm.Append("records/events.csv", "2026-10-03,8,mating,,,the neighbour's bull\n");
        var second = _farm.Draw();
        second.ShouldNotBe(first);
        var run = Record(_farm.Fill(first, (1, "done", "yes"), (2, "done", "no"), (2, "reason", "served"), (3, "done", "no"), (3, "reason", "spare")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldContain($"{first} was made void by a later sheet of that morning");
        var open = Said(_farm.Farm.Run("draft", "spring.byre").Out);
        open.ShouldContain($"Sheet {second} is open: row");
        open.ShouldNotMatch(@"rows? 1\b", "7 is on record by the other sheet");
        _farm.Treatment().ShouldContain("7 no");

        // Whoever is on the newer one only is said not to have been done.
        Run("record", "spring.byre", second, "--not-done", "the first sheet was used").Code.ShouldBe(ExitCode.Done);
        Said(_farm.Farm.Run("draft", "spring.byre").Out).ShouldBe("");
    }

    [Fact]
    public void A_programme_that_is_moved_by_three_days_leaves_its_sheet_open_until_somebody_says_that_it_was_not_used()
    {
        _farm.On(2026, 10, 3);
        var number = _farm.Draw();
        _farm.Treatment().ShouldBe("6 no, 7 on_course, 8 on_course, 9 on_course", "its day is to come");
        _farm.Farm.Change("spring.byre", "collection on 2026-10-12", "collection on 2026-10-15");
        _farm.Farm.Change("spring.byre", "up to 2026-10-03", "up to 2026-10-06");
        _farm.On(2026, 10, 7);
        _farm.Treatment().ShouldBe(InDoubt, "nobody knows whether they were treated on the day that was given up");
        var run = _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-07");
        run.Out.ShouldNotContain("☐");
        Ledger().Sheets.ShouldHaveSingleItem();
        Run("record", "spring.byre", number, "--not-done", "moved by three days").Code.ShouldBe(ExitCode.Done);
        _farm.Draw("2026-10-07").ShouldStartWith("H1007-");
    }

    [Fact]
    public void A_sheet_that_was_void_before_its_day_counts_no_more()
    {
        _farm.On(2026, 10, 3);
        var first = _farm.Draw();
        _farm.Farm.Append("records/events.csv", "2026-10-03,8,mating,,,the neighbour's bull\n");
        var second = _farm.Draw();
        second.ShouldNotBe(first);
        _farm.On(2026, 10, 5);
        var said = Said(_farm.Farm.Run("draft", "spring.byre").Out);
        said.ShouldContain(second);
        said.ShouldNotContain(first);
        _farm.Treatment().ShouldBe("6 no, 7 ask, 8 no, 9 ask");
    }

    [Fact]
    public void Whoever_was_scanned_that_morning_and_found_in_calf_is_on_record_and_her_hormone_was_not_given()
    {
        var number = _farm.Draw();
        var run = Record(_farm.Fill(number, (1, "done", "no"), (1, "reason", "in calf"), (1, "pregnancy test", "pregnant"), (1, "pregnancy test: method", "ultrasound"), (1, "pregnancy test: done by", "vet"), (2, "done", "yes"), (3, "done", "yes")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        _farm.Events.ShouldContain("2026-10-04,7,pregnancy test,pregnant");
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldContain("Take as in calf: 6, 7.");
    }

    [Fact]
    public void The_book_itself_is_no_sheet_and_gets_no_number()
    {
        var run = Record("records/events.csv");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("R0412");
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
        Directory.Exists(_farm.Farm.At("records/recorded")).ShouldBeFalse();
    }

    [Fact]
    public void A_wrong_file_is_withdrawn_whatever_stands_in_it_and_taken_again_it_is_in_doubt_again()
    {
        var before = _farm.Treatment();
        _farm.Farm.Write("vet.csv", "animal,date,transfer,weather\n7,2026-10-01,yes,dry\nnobody's,2026-10-01,yes,dry\n");
        Record("vet.csv").Code.ShouldBe(ExitCode.Bad);
        var number = Ledger().Sheets[^1].Number;
        _farm.Treatment().ShouldBe(InDoubt);
        var run = _farm.Farm.Run("record", "spring.byre", number, "--not-done", "wrong file");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain($"{number} is withdrawn");
        Ledger().Sheets[^1].Why.ShouldBe("wrong file");
        _farm.Treatment().ShouldBe(before);
        Record("vet.csv").Code.ShouldBe(ExitCode.Bad);
        _farm.Treatment().ShouldBe(InDoubt);
    }

    [Theory]
    [InlineData("animal,date,transfer,transfer: embryo\n7,2026-10-01,yes,E-03\n8,2026-10-01,,\n", "6 no, 7 no, 8 on_course, 9 on_course")]
    [InlineData("animal,date,transfer\n7,2026-10-01,yes\n8,2026-10-01,\n", "6 no, 7 no, 8 on_course, 9 on_course")]
    [InlineData("animal,date,transfer,mating\n7,2026-10-01,yes,\n8,2026-10-01,,\n", "6 no, 7 no, 8 ask, 9 on_course")]
    public void A_column_that_was_taken_out_keeps_no_row_open_but_one_that_may_have_become_another(string mended, string answers)
    {
        _farm.Farm.Write("vet.csv", "animal,date,transfer,weather\n7,2026-10-01,yes,dry\n8,2026-10-01,,dry\n");
        Record("vet.csv").Code.ShouldBe(ExitCode.Bad);
        var number = Ledger().Sheets[^1].Number;
        string[] lines = mended.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        _farm.Farm.Write("mended.csv", $"sheet,row,{lines[0]}\n{string.Concat(lines.Skip(1).Select((line, at) => $"{number},{at + 1},{line}\n"))}");
        var run = Record("mended.csv");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        _farm.Treatment().ShouldBe(answers);
    }

    [Fact]
    public void A_cross_is_no_tick_and_whoever_is_found_in_calf_and_treated_on_one_sheet_is_told()
    {
        var number = _farm.Draw();
        Record(_farm.Fill(number, (1, "done", "x"))).Err.ShouldContain("a cross may tick it or cross it out");
        _farm.Farm.Write("vet.csv", "animal,date,hormone given,pregnancy test,pregnancy test: method,pregnancy test: done by\n7,2026-10-04,yes,pregnant,ultrasound,vet\n8,2026-10-04,yes,empty,ultrasound,vet\n");
        var run = Record("vet.csv");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldContain("Row 1, 7, 4 October 2026: the same sheet says that she was found in calf");
        run.Err.ShouldNotContain("Row 2, 8, 4 October 2026: the same");
    }

    [Fact]
    public void Yes_is_the_answer_of_a_test_that_has_it_and_no_tick()
    {
        _farm.Farm.Change("vocabulary.byre", "event heat\n", "event heat\ntest mucus seen  answers yes, \"no\"  in the yards\n");
        _farm.Farm.Write("vet.csv", "animal,date,mucus seen\n7,2026-10-04,yes\n8,2026-10-04,no\n");
        var run = Record("vet.csv");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        _farm.Events.ShouldContain("2026-10-04,7,mucus seen,yes");
        _farm.Events.ShouldContain("2026-10-04,8,mucus seen,no");
    }

    [Fact]
    public void A_number_that_is_no_sheets_is_told_the_last_one()
    {
        _farm.Farm.Run("record", "spring.byre", "X0101-000000", "--not-done", "rain").ShouldBeOneClearLine("no sheet was written yet");
        var number = _farm.Draw();
        _farm.Farm.Run("record", "spring.byre", "X0101-000000", "--not-done", "rain").ShouldBeOneClearLine($"the last that was written is {number}");
    }

    [Fact]
    public void A_number_that_was_printed_on_another_farms_sheet_is_none_of_this_ledger()
    {
        var number = _farm.Draw();
        File.WriteAllText(_farm.Farm.At("x.csv"), File.ReadAllText(_farm.Farm.At($"sheets/{number}.csv")).Replace(number, "H1004-000000", StringComparison.Ordinal));
        Record("x.csv").Err.ShouldContain("the ledger has no sheet H1004-000000");
        _farm.Treatment().ShouldBe(InDoubt);
    }

    [Fact]
    public void All_that_was_not_done_is_said_in_one_line_and_wants_a_reason_and_the_right_number()
    {
        var number = _farm.Draw();
        Run("record", "spring.byre", number, "--not-done", " ").ShouldBeOneClearLine("--not-done wants the reason");
        Run("record", "spring.byre", number[..^1], "--not-done", "rain").ShouldBeOneClearLine($"nearest: {number}");
        var run = Run("record", "spring.byre", number, "--not-done", "rain");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain("not done, hormone given: 7, 8, 9, because: rain.");
        _farm.Treatment().ShouldBe("6 no, 7 on_course, 8 on_course, 9 on_course");
    }

    [Fact]
    public void A_vets_own_file_gets_a_number_and_refused_it_is_known_of_and_lies_there_to_be_mended()
    {
        _farm.Farm.Write("vet.csv", "date;animal;pregnancy test;pregnancy test: method;pregnancy test: done by;note\n2026-10-04;6;empty;ultrasound;vet;\n2026-10-04;1O7;pregnant;ultrasound;vet;\n");
        var refused = Record("vet.csv");
        refused.Code.ShouldBe(ExitCode.Bad);
        refused.Err.ShouldContain("R0132");
        var sheet = Ledger().Sheets.ShouldHaveSingleItem();
        sheet.Number.ShouldMatch("^V1004-[0-9a-f]{6}$");
        _farm.Events.ShouldNotContain("pregnancy test");
        _farm.Treatment().ShouldBe(InDoubt, "an animal that cannot be read may be anyone");
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldContain($"Sheet {sheet.Number} is open: rows 1 and 2.");

        var mended = $"records/recorded/2026-10-04-{sheet.Number}-refused.csv";
        _farm.Farm.Change(mended, "1O7", "7");
        var run = Record(mended);
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain("Every row of the sheet is on record.");
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 on_course, 9 on_course", "7 is in calf");
    }

    [Fact]
    public void A_vets_own_file_that_was_refused_may_be_mended_where_it_lies_and_recorded_again()
    {
        _farm.Farm.Write("vet.csv", "date,animal,pregnancy test,pregnancy test: method,pregnancy test: done by\n2026-10-04,6,empty,ultrasound,vet\n2026-10-04,1O7,pregnant,ultrasound,vet\n");
        Record("vet.csv").Code.ShouldBe(ExitCode.Bad);
        _farm.Farm.Change("vet.csv", "1O7", "7");
        var run = Record("vet.csv");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        Said(_farm.Farm.Run("draft", "spring.byre").Out).ShouldBe("");
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 on_course, 9 on_course");
    }

    [Fact]
    public void A_row_of_another_animal_or_of_no_row_of_the_sheet_is_refused_and_the_sheet_stays_open()
    {
        var number = _farm.Draw();
        Record(_farm.Fill(number, (1, "done", "yes"), (1, "animal", "6"))).Err.ShouldContain($"row 1 of sheet {number} is of 7, not of 6");
        Record(_farm.Fill(number, (1, "animal", "7"), (1, "row", "9"))).Err.ShouldContain($"sheet {number} has no row 9");
        Record(_farm.Fill(number, (1, "row", "1"), (2, "done", "maybe"))).Err.ShouldContain("`maybe` under `done`; expected `yes`, `no` or nothing");
        Record(_farm.Fill(number, (2, "done", "no"))).Err.ShouldContain("`no`, and no reason");
        _farm.Events.ShouldNotContain("hormone given");
        _farm.Treatment().ShouldBe(InDoubt);
        Directory.Exists(_farm.Farm.At("records/recorded")).ShouldBeFalse();
    }

    [Fact]
    public void Who_was_sold_before_her_row_came_back_is_written_down_because_it_happened()
    {
        var number = _farm.Draw();
        _farm.Farm.Append("records/events.csv", "2026-10-03,8,sale,,,\n");
        var run = Record(_farm.Fill(number, (1, "done", "yes"), (2, "done", "yes")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldContain("8, 4 October 2026: by what was known before, she did not surely pass the safety rules");
        _farm.Treatment().ShouldStartWith("6 no, 7 no");
        _farm.Events.ShouldContain("2026-10-04,8,hormone given");
    }

    [Fact]
    public void A_ledger_that_was_deleted_though_rows_name_its_sheets_ends_promises()
    {
        var number = _farm.Draw();
        Record(_farm.Fill(number, (1, "done", "yes")));
        _farm.Farm.Run("record", "spring.byre", number, "--not-done", "rain", "--by", "farmer").Code.ShouldBe(ExitCode.Done);
        var ledger = File.ReadAllText(_farm.Farm.At("records/sheets.jsonl"));
        File.Delete(_farm.Farm.At("records/sheets.jsonl"));
        _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04").Code.ShouldBe(ExitCode.Bad);
        _farm.Farm.Write("records/sheets.jsonl", ledger);

        // The book reaches the day after: with the ledger those who got nothing are Ready by it.
        _farm.Farm.Write("spring.byre", TwoCows.Programme.Replace("2026-10-03", "2026-10-05", StringComparison.Ordinal));
        _farm.On(2026, 10, 5);
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 ready, 9 ready");
        File.Delete(_farm.Farm.At("records/sheets.jsonl"));
        var run = _farm.Farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldContain("The ledger of sheets was changed, or is not whole");
        _farm.Treatment().ShouldBe("6 later, 7 ask, 8 ask, 9 ask");
    }

    [Fact]
    public void A_ledger_that_was_deleted_before_anything_was_recorded_is_missed_by_the_log()
    {
        _farm.Draw();
        File.Delete(_farm.Farm.At("records/sheets.jsonl"));
        var run = _farm.Farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldContain("The ledger of sheets was changed, or is not whole");
        _farm.Farm.Run("plan", "spring.byre", "--sheet", "2026-10-04").Code.ShouldBe(ExitCode.Bad);
    }

    [Fact]
    public void Two_programmes_that_use_one_book_know_of_each_others_sheets()
    {
        var number = _farm.Draw();
        File.Copy(_farm.Farm.At("spring.byre"), _farm.Farm.At("other.byre"));
        var run = _farm.Farm.Run("plan", "other.byre", "--sheet", "2026-10-04");
        run.Out.ShouldNotContain(number);
        run.Out.ShouldContain("Nothing is to be done on 2026-10-04");
        Ledger().Sheets.ShouldHaveSingleItem();
        _farm.Farm.Run("draft", "other.byre").Out.ShouldContain($"Sheet {number} is open");
    }

    [Fact]
    public void A_recorded_row_moves_no_promise()
    {
        _farm.Farm.Change("spring.byre", "  up to 2026-10-03\n", "");
        _farm.On(2026, 9, 25);
        Write(SheetLedger.Of([]).With(new Sheet("S0925-aa01bc", new(2026, 9, 25), new(2026, 9, 25), 1, "S", [], [new SheetRow(1, "9", null, [new SheetEntry("pregnancy test")])])));
        string Reach() => _farm.Farm.Run("draft", "spring.byre").Out.Split('\n')[0];
        var before = Reach();
        before.ShouldContain("20 September 2026");
        _farm.Farm.Write("s.csv", "sheet,row,date,session,animal,done,pregnancy test,pregnancy test: method,pregnancy test: done by,reason,note\nS0925-aa01bc,1,2026-09-25,1,9,,empty,ultrasound,vet,,\n");
        _farm.On(2026, 10, 4);
        Record("s.csv").Code.ShouldBe(ExitCode.Done);
        Reach().ShouldBe(before);
    }

    [Fact]
    public void A_workbook_that_was_filled_in_is_recorded_as_its_text_would_be()
    {
        var number = _farm.Draw();
        var rows = File.ReadAllLines(_farm.Farm.At($"sheets/{number}.csv")).Select(line => line.Split(',')).ToList();
        Byrelaw.Records.Workbooks.TextWorkbook.Of("sheet", rows).ShouldBe(File.ReadAllBytes(_farm.Farm.At($"sheets/{number}.xlsx")), "the same rows are the same bytes");
        rows[1][5] = "yes";
        File.WriteAllBytes(_farm.Farm.At("back.xlsx"), Byrelaw.Records.Workbooks.TextWorkbook.Of("sheet", rows));
        var run = Record("back.xlsx");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        _farm.Events.ShouldContain("2026-10-04,7,hormone given");
        File.Exists(_farm.Farm.At($"records/recorded/2026-10-04-{number}.xlsx")).ShouldBeTrue();
    }

    [Fact]
    public void Records_of_other_files_are_never_written_to_and_what_is_recorded_beside_them_is_read()
    {
        _farm.Farm.Write("records/diary.csv", File.ReadAllText(_farm.Farm.At("records/events.csv")));
        File.Delete(_farm.Farm.At("records/events.csv"));
        _farm.Farm.Change("spring.byre", "  no mob on this farm\n", """
              no mob on this farm
              from "animals.csv", a row for each animal, as at 2026-10-03
                animal in "animal"
                official identity in "official_id"
                born in "born"
                sex in "sex"
              from "diary.csv", a row for each event
                animal in "animal"
                date in "date"
                kind in "kind"

            """.ReplaceLineEndings("\n"));
        var diary = File.ReadAllText(_farm.Farm.At("records/diary.csv"));
        var number = _farm.Draw();
        var run = Record(_farm.Fill(number, (1, "done", "yes"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "spare")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        File.ReadAllText(_farm.Farm.At("records/diary.csv")).ShouldBe(diary);
        _farm.Events.ShouldStartWith("date,animal,kind,value,unit,note,recorded,sheet row,");
        _farm.Farm.Run("draft", "spring.byre").Out.ShouldNotContain("is open");
        _farm.Treatment().ShouldBe("6 no, 7 no, 8 no, 9 on_course");
    }

    [Fact]
    public void What_stands_in_the_book_stays_byte_for_byte_but_for_new_columns()
    {
        var number = _farm.Draw();
        var before = _farm.Events;
        Record(_farm.Fill(number, (1, "done", "yes")));
        var after = _farm.Events.Split('\n');
        foreach (var (line, at) in before.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select((line, at) => (line, at)))
        {
            after[at].ShouldStartWith(line);
            after[at][line.Length..].Trim(',').ShouldBe(at == 0 ? after[0][(line.Length + 1)..] : "");
        }
    }

    [Fact]
    public void A_remark_over_two_lines_stays_as_it_was()
    {
        const string Remark = "2026-09-21,9,heat,,,\"stood for 8,\nand for 7\"";
        _farm.Farm.Append("records/events.csv", Remark + "\n");
        Record(_farm.Fill(_farm.Draw(), (1, "done", "yes"))).Code.ShouldBe(ExitCode.Done);
        _farm.Events.ShouldContain(Remark + ",");
        _farm.Farm.Run("records", "records", "--rules", "spring.byre").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void A_book_whose_last_line_has_no_end_is_not_written_to()
    {
        var number = _farm.Draw();
        File.WriteAllText(_farm.Farm.At("records/events.csv"), _farm.Events.TrimEnd('\n'));
        var run = Record(_farm.Fill(number, (1, "done", "yes")));
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("R0411");
    }

    [Fact]
    public void A_book_that_may_not_be_written_to_is_left_as_it_is_and_the_sheet_stays_open()
    {
        var number = _farm.Draw();
        File.SetAttributes(_farm.Farm.At("records/events.csv"), FileAttributes.ReadOnly);
        Record(_farm.Fill(number, (1, "done", "yes"))).ShouldBeOneClearLine("may not be written to; nothing was changed");
        _farm.Events.ShouldNotContain("hormone given");
        Directory.Exists(_farm.Farm.At("records/recorded")).ShouldBeFalse();
        _farm.Treatment().ShouldBe(InDoubt);
        File.SetAttributes(_farm.Farm.At("records/events.csv"), FileAttributes.Normal);
    }

    [Fact]
    public void Two_people_who_record_at_once_do_it_one_after_the_other_and_nothing_is_lost_or_doubled()
    {
        var number = _farm.Draw();
        string[] files = [_farm.Fill(number, (1, "done", "yes")), "second.csv"];
        File.Copy(_farm.Farm.At(files[0]), _farm.Farm.At(files[1]));
        _farm.Farm.Change(files[1], $"{number},2,2026-10-04,1,8,,", $"{number},2,2026-10-04,1,8,yes,");
        var runs = new Run[4];
        Parallel.For(0, runs.Length, at => runs[at] = Record(files[at % 2]));
        runs.ShouldAllBe(run => run.Code == ExitCode.Done);
        foreach (var row in new[] { 1, 2 })
        {
            _farm.Events.Split('\n').Count(line => line.EndsWith($"{number}:{row}", StringComparison.Ordinal)).ShouldBe(1);
        }
    }

    [Fact]
    public void A_rehearsal_is_written_into_a_copy_and_the_farms_own_book_is_as_it_was()
    {
        _farm.On(2026, 8, 1);
        _farm.Farm.Run("plan", "spring.byre", "--rehearse", "2026-10-04").Code.ShouldBe(ExitCode.Done);
        var name = Path.GetFileNameWithoutExtension(Directory.GetFiles(_farm.Farm.At("sheets"), "*.csv").Single());
        var events = _farm.Events;
        var file = _farm.Fill(name, (1, "done", "yes"), (2, "done", "yes"), (3, "done", "no"), (3, "reason", "spare"));
        Record(file).ShouldBeOneClearLine("is a rehearsal's: it is written into a copy of the farm. Say where that is to lie, with --out DIR");
        Run("record", "spring.byre", file, "--out", "records/tried").ShouldBeOneClearLine("lies within the records themselves");
        Run("record", "spring.byre", file, "--out", "records-tried").Code.ShouldBe(ExitCode.Done, "a name that only begins as theirs");
        var run = Run("record", "spring.byre", file, "--out", "rehearsed");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Out.ShouldContain("REHEARSAL: written into a copy, rehearsed/spring.byre.");
        _farm.Events.ShouldBe(events);
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
        File.ReadAllText(_farm.Farm.At("rehearsed/records/events.csv")).ShouldContain("2026-10-04,7,hormone given");
        _farm.On(2026, 10, 5);
        var draft = _farm.Farm.Run("draft", "rehearsed/spring.byre", "--out", "out2");
        draft.Code.ShouldBe(ExitCode.Done, draft.ToString());
        draft.Out.ShouldContain("Devices in: 7 and 8 since 4 October 2026.");
    }

    [Fact]
    public void Open_sheets_lie_in_the_report_and_whoever_judges_it_again_doubts_the_same()
    {
        var number = _farm.Draw();
        _farm.Farm.Run("draft", "spring.byre").Code.ShouldBe(ExitCode.Done);
        File.ReadAllText(_farm.Farm.At("out/open-sheets.csv")).ReplaceLineEndings("\n").ShouldStartWith($"sheet,row,date,session,animal,embryo,kind,device\n{number},1,2026-10-04,1,7,,hormone given,in\n");
        File.ReadAllLines(_farm.Farm.At("judging-log.jsonl"))[^1].ShouldContain($"\"sheets\":[\"{number}\"]");
        _farm.Farm.Run("verify", "out").Code.ShouldBe(ExitCode.Done);
        Run("record", "spring.byre", number, "--not-done", "rain").Code.ShouldBe(ExitCode.Done);
        var verified = _farm.Farm.Run("verify", "out");
        verified.Code.ShouldBe(ExitCode.Bad, "the records are others now");
        verified.Out.ShouldContain("records");
    }

    private Run Record(string file) => Run("record", "spring.byre", file, "--by", "farmer");

    private Run Run(params string[] args) => _farm.Farm.Run(args);

    private SheetLedger Ledger() => SheetLedger.In(_farm.Farm.At("records"))!;

    private void Write(SheetLedger ledger) => File.WriteAllBytes(_farm.Farm.At("records/sheets.jsonl"), ledger.Bytes.ToArray());

    private static string Said(string text) => string.Join(' ', text.Split('\n').Where(line => line.Contains(" is open: ", StringComparison.Ordinal)));
}
