namespace Byrelaw.Cli.Tests.Sheets;

/// <summary>Stories of a day of transfer: whoever is paired is fit, or examined first; what nobody brought back stands in doubt; no wrong parent is written.</summary>
public sealed class PairTests : IDisposable
{
    private readonly TransferMorning _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_run_sheet_reads_as_approved()
    {
        var run = _farm.Pair("--by", "farmer");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        var page = Directory.GetFiles(_farm.Farm.At("sheets"), "*.md").Single();
        Snapshot.Verify(File.ReadAllText(page), extension: "md");
        File.ReadAllText(Path.ChangeExtension(page, "csv")).ReplaceLineEndings("\n").ShouldContain(",11,,,,,E-01,");
    }

    [Fact]
    public void Drawn_and_not_back_its_cows_may_be_in_calf_and_its_embryos_are_offered_to_nobody()
    {
        var number = _farm.Draw();
        _farm.Rows(number).ShouldBe(["11 E-01", "12 E-03", "13 E-17", "14"]);
        _farm.Embryo().ShouldContain($"E-17 is in doubt, and offered to nobody: it may stand on row 3 of sheet {number}");
        foreach (var cow in new[] { "11", "12", "13", "14" })
        {
            _farm.Answer(cow).ShouldBe("ask", cow);
        }

        // The next day all of it is written down: who got none is as she was, and the embryos are used.
        _farm.Farm.Clock.Now = _farm.Farm.Clock.Now.AddDays(1);
        var run = Record(_farm.Fill(number,
            (1, "transfer", "yes"), (1, "transfer: straw read", "S-0113"), (1, "transfer: operator", "vet"), (1, "transfer: read by", "farmer"), (1, "transfer: side", "left"),
            (2, "transfer", "yes"), (2, "transfer: straw read", "17"), (2, "transfer: operator", "vet"), (2, "transfer: read by", "farmer"),
            (3, "done", "no"), (3, "reason", "no corpus luteum"), (4, "done", "no"), (4, "reason", "not needed")));
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        run.Err.ShouldBe("");
        run.Out.ShouldContain("Every row of the sheet is on record.");
        _farm.Embryo().ShouldContain("1 fresh, 1 in the tank and 2 used");
        (_farm.Answer("11"), _farm.Answer("12"), _farm.Answer("13"), _farm.Answer("14")).ShouldBe(("no", "no", "ready", "ready"));
    }

    [Fact]
    public void Another_straw_than_the_embryos_own_stops_the_sheet_and_nothing_is_written()
    {
        var number = _farm.Draw();
        var run = Record(_farm.Fill(number, (1, "transfer", "yes"), (1, "transfer: straw read", "S-0117"), (2, "transfer", "yes")));
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("R0413: straw S-0117 was read, and E-01 is in S-0113");
        run.Err.ShouldContain("S-0117 holds E-03");
        File.ReadAllText(_farm.Farm.At("records/events.csv")).ShouldNotContain("transfer");

        // The label is mended: E-03 went in. Row 2, which has E-03 too, is then said not to have been done.
        var mended = Record(_farm.Fill(number, (1, "transfer: embryo", "E-03"), (1, "transfer: operator", "vet"), (1, "transfer: read by", "farmer"), (2, "transfer", "no"), (2, "reason", "her straw went into 11")));
        mended.Code.ShouldBe(ExitCode.Done, mended.ToString());
        mended.Err.ShouldContain("embryo E-03 is not the one on her line");
    }

    [Fact]
    public void A_straw_that_nobody_read_back_is_written_and_told_and_one_that_went_into_two_cows_is_not_written()
    {
        var number = _farm.Draw();
        Record(_farm.Fill(number, (1, "transfer", "yes"), (1, "transfer: straw read", "S-0113"), (1, "transfer: operator", "vet"))).Err.ShouldContain("nobody else read the straw back");
        var twice = Record(_farm.Fill(number, (2, "transfer", "yes"), (2, "transfer: embryo", "E-01")));
        twice.Code.ShouldBe(ExitCode.Bad);
        File.ReadAllText(_farm.Farm.At("records/events.csv")).Split('\n').Count(line => line.Contains(",transfer,", StringComparison.Ordinal)).ShouldBe(1);
    }

    [Fact]
    public void A_straw_that_was_thawed_and_went_into_nobody_is_in_doubt_until_it_is_discarded()
    {
        var number = _farm.Draw();
        Record(_farm.Fill(number, (3, "done", "no"), (3, "transfer: straw read", "S-0096"), (3, "reason", "dropped"))).Code.ShouldBe(ExitCode.Done);
        _farm.Embryo().ShouldContain("E-17 is in doubt, and offered to nobody: its straw was thawed and it went into nobody");
        var width = File.ReadLines(_farm.Farm.At("records/events.csv")).First().Split(',').Length;
        _farm.Farm.Append("records/events.csv", $"2026-10-20,embryo:E-17,embryo discarded{new string(',', width - 3)}\n");
        _farm.Embryo().ShouldContain("1 discarded");
    }

    [Fact]
    public void Drawn_again_without_a_cow_the_other_pairs_stay_and_she_is_to_be_closed_on_the_new_sheet()
    {
        var first = _farm.Draw();
        var second = _farm.Draw("--without", "12");
        second.ShouldNotBe(first);
        _farm.Rows(second).ShouldBe(["11 E-01", "13 E-17", "14 E-03", "12 E-03", "14"]);
        File.ReadAllText(_farm.Farm.At($"sheets/{second}.md")).ShouldContain($"Replaces {first}: if that was used, record it first.");
        File.ReadAllText(_farm.Farm.At($"sheets/{second}.md")).ShouldContain($"{first}:2");

        // The same again is the same number, and adds no line.
        _farm.Draw("--without", "12").ShouldBe(second);
        File.ReadLines(_farm.Farm.At("records/sheets.jsonl")).Count().ShouldBe(2);
        _farm.Answer("12").ShouldBe("ask");
    }

    [Fact]
    public void A_donor_is_paired_only_where_somebody_asks_for_it()
    {
        _farm.Pair().Out.ShouldContain("16: a donor of the programme");
        _farm.Rows(_farm.Draw("--also", "16")).ShouldContain(row => row.StartsWith("16", StringComparison.Ordinal));
    }

    [Fact]
    public void Records_that_do_not_reach_the_day_pair_nobody_and_a_person_may_say_that_nothing_more_happened()
    {
        _farm.Farm.Change("spring.byre", "up to 2026-10-20", "up to 2026-10-19");
        File.WriteAllLines(_farm.Farm.At("records/events.csv"), File.ReadAllLines(_farm.Farm.At("records/events.csv")).Where(line => !line.Contains("ovary check", StringComparison.Ordinal)));
        var run = _farm.Pair();
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("nobody is paired");
        run.Err.ShouldContain("--records-to 2026-10-20");
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
        _farm.Pair("--records-to", TransferMorning.Day, "--by", "farmer").Out.ShouldContain("records to 20 October 2026, said by farmer");
        _farm.Pair("--records-to", "2026-10-21").Code.ShouldBe(ExitCode.CouldNot, "nobody has written down what has not happened yet");
    }

    [Fact]
    public void A_rule_that_cannot_be_read_pairs_nobody()
    {
        _farm.Farm.Change("recipients.byre", "needs no mating or transfer since last calving", "needs no mating or transfer sinze last calving");
        var run = _farm.Pair();
        run.Code.ShouldBe(ExitCode.Bad);
        Directory.Exists(_farm.Farm.At("sheets")).ShouldBeFalse();
    }

    [Fact]
    public void Rows_stand_in_the_order_of_the_race_and_a_rehearsal_stands_in_no_ledger()
    {
        _farm.Farm.Write("race.txt", "13\n11\n");
        var number = _farm.Draw("--rehearse", TransferMorning.Day, "--order", "race.txt").Replace("REHEARSAL ", "", StringComparison.Ordinal);
        _farm.Rows($"REHEARSAL-{number}").ShouldBe(["13 E-17", "11 E-01", "12 E-03", "14"]);
        File.Exists(_farm.Farm.At("records/sheets.jsonl")).ShouldBeFalse();
        _farm.Answer("11").ShouldBe("ready");
    }

    [Theory]
    [InlineData("2026-10-20,13,mating,,,", "13", "served since her heat")]
    [InlineData("2026-10-1?,13,mating,,,", "13", "a service of a day that nobody can read")]
    [InlineData("2026-10-19,13,ovary check,follicle,,", "13", "no corpus luteum was felt")]
    [InlineData("2026-10-19,13,ovary check,pending,,", "13", "what was found is not written down yet")]
    [InlineData("2026-10-16,13,heat,,,", "13", "in heat again, and four days are too few")]
    [InlineData("2026-10-15,1?,heat,,,", "11 12 13 14", "a heat of one of them, and nobody can read of which")]
    public void What_speaks_against_her_or_may_do_so_leaves_her_out(string row, string without, string why)
    {
        _farm.Farm.Append("records/events.csv", row + "\n");
        var run = _farm.Pair();
        var sheets = Directory.Exists(_farm.Farm.At("sheets")) ? Directory.GetFiles(_farm.Farm.At("sheets"), "*.csv") : [];
        var stands = sheets.SelectMany(sheet => _farm.Rows(Path.GetFileNameWithoutExtension(sheet))).Select(line => line.Split(' ')[0]).ToList();
        stands.Intersect(without.Split(' ')).ShouldBeEmpty(why + "\n" + run);
    }

    [Theory]
    [InlineData("S-0117,16,Alto,collected eggs,2026-10-12,,,7,2", "S-0117,16,Alto,collected eggs,2026-10-12,,,7,", "grade is not known")]
    [InlineData("S-0117,16,Alto,collected eggs,2026-10-12,,,7,2", "S-0117,16,Alto,collected eggs,2026-10-12,,,,2", "stage is not known")]
    [InlineData("S-0117,16,Alto,collected eggs,2026-10-12,,,7,2", "S-0117,16,Alto,collected eggs,2026-10-12,,,3,2", "too young a stage")]
    [InlineData("S-0117,16,Alto,collected eggs,2026-10-12,,,7,2", "S-0117,16,Alto,collected eggs,2026-10-09,,,7,2", "ten days old")]
    [InlineData("S-0117,16,Alto,collected eggs,2026-10-12,,,7,2", "S-0117,16,Alto,,2026-10-12,,,7,2", "nobody knows how old it is")]
    [InlineData("S-0117,16,Alto,collected eggs,2026-10-12,,,7,2", "S-0117,16,Alto,collected eggs,2026-10-12,,,7,B", "a grade that cannot be read")]
    public void An_embryo_of_which_something_does_not_hold_or_is_not_known_goes_into_nobody(string was, string now, string why)
    {
        _farm.Farm.Change("records/embryos.csv", was, now);
        _farm.Rows(_farm.Draw()).ShouldNotContain(row => row.EndsWith("E-03", StringComparison.Ordinal), why);
    }

    private Run Record(string file) => _farm.Farm.Run("record", "spring.byre", file);
}
