namespace Byrelaw.Checking.Tests.Examples;

/// <summary>Each kind of expectation, coming out as expected and otherwise.</summary>
public sealed class ExpectationTests
{
    private const string Cow = "cow born 2021-08-10\n  calving 2026-09-07\n  judged on 2026-10-19";
    private const string Heifer = "heifer born 2025-01-15\n  judged on 2026-10-19";

    [Theory]
    [InlineData(Cow, "expect \"Eight weeks calved\" not met, until 2026-11-02, from 2026-09-07, because of calving")]
    [InlineData(Heifer, "expect \"Eight weeks calved\" does not apply")]
    [InlineData(Cow + "\n  heat 2026-09-28", "expect \"Cycling\" met, from 2026-09-28, because of heat and cycling")]
    [InlineData(Cow + "\n  heat 2026-09-28", "expect cycling true, from 2026-09-28")]
    [InlineData(Cow, "expect cycling false")]
    [InlineData(Cow + "\n  not kept heat, mating", "expect cycling not known, missing mating and heat")]
    [InlineData(Cow, "expect \"Settled in milk\" not met, until 2026-11-06")]
    [InlineData(Cow, "expect \"Free of BVD virus\" not known, missing BVD virus")]
    [InlineData(Cow + "\n  BVD virus 2026-10-10 pending", "expect \"Free of BVD virus\" not known, missing BVD virus")]
    [InlineData(Cow + "\n  heat 2026-09-28", "expect recipients later, from 2026-11-02, because of \"Eight weeks calved\"")]
    [InlineData(Cow + "\n  BVD virus 2026-10-10 positive\n  collection on 2026-10-19", "expect donors no, because of \"Free of BVD virus\"")]
    [InlineData(Cow + "\n  collection on 2026-10-19", "expect donors ask, missing BVD virus")]
    [InlineData(Heifer + "\n  heat 2026-09-28", "expect recipients ready, from 2026-09-28")]
    [InlineData(Heifer + "\n  heat 2026-09-28\n  records to 2026-10-01", "expect recipients on course")]
    [InlineData(Cow + "\n  heat 2026-09-28\n  not kept lameness", "expect recipients later, not before 2026-11-02, missing lameness")]
    [InlineData(Cow + "\n  heat 2026-08-20\n  collection on 2026-10-19", "expect \"Two cool months\" not met, because of heat")]
    [InlineData(Cow + "\n  heat 2026-08-19\n  collection on 2026-10-19", "expect \"Two cool months\" met")]
    public void It_comes_out_as_expected(string animal, string expectation) =>
        Tried.Failures(Tried.Examples($"example \"It\"\n  {animal}\n  {expectation}\n")).ShouldBe("");

    [Theory]
    [InlineData("mob Hill since 2026-06-01", "not met, because of mob")]
    [InlineData("mob River since 2026-06-01", "met")]
    [InlineData("calving 2026-09-07", "not known, missing mob")]
    public void A_mob_that_a_rule_names_is_there_whoever_is_in_it(string mob, string expected) => Tried.Failures(Tried.Examples(
        $"example \"It\"\n  cow born 2021-08-10\n  parity 1\n  {mob}\n  judged on 2026-10-19\n  expect \"Not with the bull\" {expected}\n",
        Tried.Rules + "rule \"Not with the bull\"\n  needs not in mob Hill\n  because \"The bull runs there.\"\n  source \"common practice, no source\"\n"
            + "define flats\n  in mob Flats\n")).ShouldBe("");

    [Fact]
    public void What_came_out_otherwise_is_said_beside_what_was_expected() => Snapshot.Verify(Tried.Failures(Tried.Examples(
        $"""
        example "Rules"
          {Cow}
          expect "Eight weeks calved" met
          expect "Eight weeks calved" not met, until 2026-11-03
          expect "Eight weeks calved" not met, from 2026-09-08
          expect "Eight weeks calved" not met, because of heat
          expect "Eight weeks calved" does not apply
          expect "Cycling" not known, missing heat
          expect "Free of BVD virus" not known, missing heat
          expect "Free of BVD virus" not known, until 2026-12-01
          expect cycling true, because of heat
          expect "Settled in milk" met, until 2027-01-01
          expect recipients ready, from 2026-11-02
          expect recipients later, from 2026-11-02
          expect donors later, not before 2026-11-02
          expect donors ask, missing BVD virus and calving

        example "A heifer"
          {Heifer}
          expect "Eight weeks calved" met
          expect recipients no, because of "Eight weeks calved"
        """)));

    [Fact]
    public void Records_that_no_farm_could_keep_are_told_at_their_lines() => Snapshot.Verify(Tried.Failures(Tried.Examples(
        $"""
        example "Values"
          {Cow}
          liver copper 2026-10-01 95
          body condition 2026-10-01 12
          liver copper 2026-10-02 95 kg
          breeding index 12 kg
          parity 3.5
          expect cycling false
        """)));

    [Fact]
    public void A_rule_that_is_broken_is_not_tried()
    {
        var files = new RuleFiles(("rules.byre", Tried.Rules.Replace("at least 56 days", "at leest 56 days", StringComparison.Ordinal) + $"example \"It\"\n  {Cow}\n  expect cycling true\n"));
        var reading = Language.Reading.RulebookReader.Read("rules.byre", files)!;
        reading.HasErrors.ShouldBeTrue();
        Checking.Examples.ExampleRunner.Run(reading, files).ShouldBeEmpty();
    }

    [Fact]
    public void A_used_files_example_is_tried_against_that_file_and_a_farms_own_against_its_changes()
    {
        const string Farm = """
            use "rules.byre"
            change "Eight weeks calved"
              needs at least 63 days since last calving
              because "Cows were slow to clean up."
              agreed by "herd vet" on 2026-06-14
            example "Nine weeks here"
              cow born 2021-08-10
              calving 2026-08-24
              judged on 2026-10-19
              expect "Eight weeks calved" not met, until 2026-10-26
            """;
        var shared = Tried.Rules + "example \"Eight weeks\"\n  cow born 2021-08-10\n  calving 2026-08-24\n  judged on 2026-10-19\n  expect \"Eight weeks calved\" met\n";
        var files = new RuleFiles(("farm.byre", Farm), ("rules.byre", shared));
        var outcomes = Checking.Examples.ExampleRunner.Run(Language.Reading.RulebookReader.Read("farm.byre", files)!, files);
        outcomes.Select(outcome => outcome.Example.Name).ShouldBe(["Nine weeks here", "Eight weeks"]);
        Tried.Failures(outcomes).ShouldBe("");
    }
}
