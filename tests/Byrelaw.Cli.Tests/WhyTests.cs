namespace Byrelaw.Cli.Tests;

public sealed class WhyTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData("1007")]
    [InlineData("1019")]
    [InlineData("1033")]
    [InlineData("1423")]
    public void An_animal_is_explained_as_approved(string number) => Snapshot.Verify(_farm.Run("why", "spring.byre", number).ToString(), number);

    [Fact]
    public void What_is_supposed_is_told_first_and_is_never_on_record()
    {
        var run = Example("1012", "--suppose", "pregnancy test 2026-10-03 empty with method ultrasound", "--suppose", "heat 2026-10-13");
        Snapshot.Verify(run);
        run.ShouldNotContain("✓ Ready", customMessage: "what is supposed of a day to come is never sure");
    }

    [Fact]
    public void Each_session_has_its_own_days()
    {
        Example("1027").ShouldContain("session 2");
        Snapshot.Verify(Example("1027", "--session", "2"));
    }

    [Fact]
    public void A_line_that_cannot_be_supposed_is_told_as_in_a_worked_example()
    {
        Snapshot.Verify(string.Join("---\n", new[] { "bul out 2026-08-29", "pregnancy test 2026-10-03 maybe", "heat", "", "mating 2026-09-01 # a\ncalving 2026-08-01" }
            .Select(line => $"{line}\n{_farm.Run("why", "spring.byre", "1012", "--suppose", line)}")));
        _farm.Run("why", "spring.byre", "1012", "--suppose", "mating 2026-09-01", "--session", "4").ShouldBeOneClearLine("the programme has 1 session; there is no session 4");
    }

    private static string Example(params string[] more)
    {
        var @out = new StringWriter();
        ByrelawApp.Run(["why", "examples/withy-bend/spring-2026.byre", .. more], Doors.Plain(@out, TextWriter.Null, Byrelaw.Testing.Repository.At("")));
        return @out.ToString();
    }

    [Fact]
    public void All_shows_every_rule() => Snapshot.Verify(_farm.Run("why", "spring.byre", "1423", "--all").ToString());

    [Fact]
    public void Another_day_and_what_was_known_then() =>
        Snapshot.Verify(_farm.Run("why", "spring.byre", "1423", "--on", "2026-11-03", "--known-on", "2026-09-19").ToString());

    [Fact]
    public void What_happens_after_the_day_of_judging_is_no_part_of_her_story_on_it()
    {
        _farm.Run("why", "spring.byre", "1019").Out.ShouldContain("  calved 22 Jul · served 25 Aug · no transfer since\n");
        _farm.Run("why", "spring.byre", "1019", "--on", "2026-08-24").Out.ShouldContain("  calved 22 Jul · not served since · no transfer since\n");
        _farm.Run("why", "spring.byre", "1019", "--on", "2026-07-21").Out.ShouldContain("  born 12 Aug 2021 · not served · no transfer\n");
    }

    [Fact]
    public void Where_only_her_birth_keeps_the_records_from_counting_it_is_what_is_asked_for()
    {
        // Calvings are complete since 2015 and none is on record; she may have been born before.
        _farm.Change("spring.byre", "since 2020-01-01", "since 2015-01-01");
        _farm.Change("spring.byre", "to final transfer", "to final transfer, for looking only");
        _farm.Write("recipients.byre", "use \"vocabulary.byre\"\n\nrules for recipients\nrule \"No service\"\n  needs no mating ever\n  because \"b\"\n  source \"common practice, no source\"\n");
        _farm.Change("records/animals.csv", "1007,554000700041007,2021-08-10,F", "1007,554000700041007,,F");

        _farm.Run("why", "spring.byre", "1007").Out.ShouldContain("Ask: born is blank.");
        _farm.Run("why", "spring.byre", "1012").Out.ShouldContain("Will match");
        _farm.Change("spring.byre", "complete for calving, mating, transfer", "complete for calving, transfer");
        _farm.Run("why", "spring.byre", "1007").Out.ShouldContain("Ask: mating records not complete.");
    }

    [Fact]
    public void Where_no_record_has_a_date_none_is_made_up()
    {
        _farm.Change("spring.byre", "  up to 2026-09-20\n", "");
        _farm.Write("records/events.csv", "date,animal,kind,value,unit,note,recorded\n");
        _farm.Write("records/animals.csv", "animal,official_id,born,sex,breed,mob\n1007,,,F,,\n");

        var run = _farm.Run("draft", "spring.byre", "--out", "draft");
        string[] said = [run.Out, _farm.Run("why", "spring.byre", "1007").Out, _farm.Run("records", "records", "--rules", "spring.byre").Out];
        said.ShouldAllBe(text => text.Contains("no record with a date could be read", StringComparison.Ordinal));
        said.Concat(Directory.GetFiles(_farm.At("draft"), "*", SearchOption.AllDirectories).Select(File.ReadAllText))
            .ShouldAllBe(text => !text.Contains("1970", StringComparison.Ordinal));
        _farm.Run("plan", "spring.byre").ShouldBeOneClearLine("nobody knows what day it is");
        _farm.Run("plan", "spring.byre", "--today", "2026-08-01", "--out", "plan").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void An_unknown_number_offers_the_nearest()
    {
        _farm.Run("why", "spring.byre", "1432").ShouldBeOneClearLine("no animal 1432 in records/animals.csv; did you mean 1423?");
        _farm.Run("why", "spring.byre", "Daisy").ShouldBeOneClearLine("no animal Daisy in records/animals.csv");
    }

    [Fact]
    public void Several_lists_have_a_section_each_and_a_list_that_does_not_name_her_has_none()
    {
        _farm.Change("recipients.byre", "rules for recipients", "rules for donors\n\nrule \"Calved at all\"\n  needs at least 1 calving ever\n  because \"Donors have calved.\"\n  source \"common practice, no source\"\n\nrules for recipients");
        _farm.Change("spring.byre", "  choose recipients", "  choose donors from \"1007\", judged on collection\n  choose recipients");
        Sections("1007").ShouldBe(["donors", "recipients"]);
        Sections("1012").ShouldBe(["recipients"]);
    }

    [Fact]
    public void Json_has_the_shape_of_a_draft_with_one_animal()
    {
        var animals = JsonDocument.Parse(_farm.Run("why", "spring.byre", "1423", "--format", "json").Out).RootElement.GetProperty("lists")[0].GetProperty("animals");
        animals.GetArrayLength().ShouldBe(1);
        animals[0].GetProperty("animal").GetString().ShouldBe("1423");
        animals[0].GetProperty("answer").GetString().ShouldBe("later");
    }

    [Fact]
    public void It_says_what_the_draft_says()
    {
        var draft = JsonDocument.Parse(_farm.Run("draft", "spring.byre", "--format", "json").Out).RootElement.GetProperty("lists")[0].GetProperty("animals");
        foreach (var animal in draft.EnumerateArray())
        {
            var number = animal.GetProperty("animal").GetString()!;
            var hers = JsonDocument.Parse(_farm.Run("why", "spring.byre", number, "--format", "json").Out).RootElement.GetProperty("lists")[0].GetProperty("animals")[0];
            hers.GetRawText().ShouldBe(animal.GetRawText());
        }
    }

    private IEnumerable<string> Sections(string number)
    {
        var run = _farm.Run("why", "spring.byre", number, "--format", "json");
        run.Code.ShouldBe(ExitCode.Done, run.Err);
        return JsonDocument.Parse(run.Out).RootElement.GetProperty("lists").EnumerateArray().Select(list => list.GetProperty("list").GetString()!);
    }

    [Fact]
    public void What_one_part_of_a_rule_can_no_longer_become_is_not_said_beside_what_another_can_and_nothing_is_said_twice()
    {
        using var @out = new StringWriter { NewLine = "\n" };
        ByrelawApp.Run(["why", "examples/withy-bend/spring-2026.byre", "1015"], Doors.Plain(@out, TextWriter.Null, Byrelaw.Testing.Repository.At("")));

        var row = @out.ToString().Split('\n').Single(line => line.StartsWith("  ✗ Not in calf  ", StringComparison.Ordinal));
        row.ShouldContain("a new result of pregnancy test");
        row.ShouldNotContain("nothing any more");
        row.Split("pregnancy test pregnant on 11 Mar").Length.ShouldBe(2);
        row.ShouldNotContain("pregnancy test pregnant, 11 Mar");
    }
}
