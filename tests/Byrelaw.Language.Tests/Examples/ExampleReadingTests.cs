using Byrelaw.Language.Rulebooks.Examples;

namespace Byrelaw.Language.Tests.Examples;

public sealed class ExampleReadingTests
{
    private const string Base = Rules.Words + """
        add to heat  with cause is one of own, treatment
        define cycling
          at least 1 heat or mating since last calving
        rules for recipients
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "."
          source "."

        """;

    internal const string Everything = """
        example "Everything"
          female born 2021
          oestrus 2026-09-28 with cause own
          BVD virus 2026-05-01 pending
          serum copper 2026-09-15 less than 3 umol/L
          body condition 2026-09-15 4.5
          breed Jersey
          official identity "NZ 12"
          mature weight 500 kg
          dam genomic date 2026-02-01
          parity 3
          mob "Back hill" since 2025-06-01
          5 of her mob serum copper 2026-09-15 8 umol/L
          rank 20 of 100 by breeding index
          not kept mating, metritis
          first transfer on 2026-10-19
          judged from 2026-10-19 to 2026-10-20
          records to 2026-10-01
          expect "Eight weeks calved" not met, until 2026-11-02, because of calving and cycling, missing BVD virus
          expect cycling true
          expect recipients later, not before 2026-11-02, missing born
        """;

    [Fact]
    public void Every_sort_of_line_is_read()
    {
        var example = Rules.Good(Base + Everything).Examples.ShouldHaveSingleItem();
        (example.Name, example.Sort, example.Born).ShouldBe(("Everything", ExampleSort.Female, "2021"));
        example.Records.Select(record => (record.Kind.Name, record.Value, record.Unit, record.OfHerMob)).ShouldBe([
            ("heat", "", "", 0), ("BVD virus", "pending", "", 0), ("serum copper", "<3", "umol/L", 0), ("body condition", "4.5", "", 0),
            ("mob", "Back hill", "", 0), ("serum copper", "8", "umol/L", 5)]);
        example.Records[0].Details.ShouldBe([("cause", "own")]);
        example.Facts.Select(fact => (fact.Name, fact.Value)).ShouldBe([
            ("breed", "Jersey"), ("official identity", "NZ 12"), ("mature weight", "500 kg"), ("dam genomic date", "2026-02-01"), ("parity", "3")]);
        (example.Rank!.Rank, example.Rank.Of, example.Rank.Fact.Name).ShouldBe((20, 100, "breeding index"));
        example.NotKept.Select(kind => kind.Name).ShouldBe(["mating", "metritis"]);
        example.Dates.Select(date => (date.Name, date.Date)).ShouldBe([("first transfer", new LocalDate(2026, 10, 19))]);
        (example.JudgedFrom, example.JudgedTo, example.RecordsTo).ShouldBe((new LocalDate(2026, 10, 19), new LocalDate(2026, 10, 20), new LocalDate(2026, 10, 1)));
        example.Expectations.Select(expectation => (expectation.Of, expectation.Name, expectation.Answer)).ShouldBe([
            (ExpectationOf.Rule, "Eight weeks calved", ExpectedAnswer.NotMet), (ExpectationOf.Define, "cycling", ExpectedAnswer.True),
            (ExpectationOf.List, "recipients", ExpectedAnswer.Later)]);
        example.Expectations[0].Until.ShouldBe(new LocalDate(2026, 11, 2));
        example.Expectations[0].BecauseOf.ShouldBe(["calving", "cycling"]);
        example.Expectations[0].Missing.ShouldBe(["BVD virus"]);
        example.Expectations[2].NotBefore.ShouldBe(new LocalDate(2026, 11, 2));
        example.Expectations[2].Missing.ShouldBe(["born"]);
    }

    [Fact]
    public void Without_more_the_records_reach_the_last_judged_day()
    {
        var example = Rules.Good(Base + "example \"It\"\n  heifer\n  judged on 2026-10-19\n  expect cycling false\n").Examples.ShouldHaveSingleItem();
        (example.Born, example.RecordsTo).ShouldBe(("", new LocalDate(2026, 10, 19)));
    }

    [Fact]
    public void The_canonical_text_leaves_examples_out() =>
        CanonicalText.Of(Rules.Good(Base + Everything)).ShouldBe(CanonicalText.Of(Rules.Good(Base)));

    [Fact]
    public void Examples_of_a_used_file_are_that_files_own()
    {
        var reading = Rules.Read(new RuleFilesInMemory().Add("farm.byre", "use \"base.byre\"\n").Add("base.byre", Base + Everything));
        Rules.Good(reading).Examples.ShouldBeEmpty();
        reading.UsedWithExamples.ShouldBe(["base.byre"]);
    }
}
