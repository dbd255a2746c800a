namespace Byrelaw.Language.Tests.Examples;

/// <summary>Every way in which an example can be wrong, and what is said of it.</summary>
public sealed class ExampleProblemsTests
{
    private const string Base = Rules.Words + """
        define cycling
          at least 1 heat or mating since last calving
        rules for recipients
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "."
        prefer "Settled in milk"
          at least 60 days since last calving
          because "."

        """;

    private const string Cow = "cow born 2021-08-10\n  calving 2026-09-07\n  judged on 2026-10-19\n";
    private const string Met = "  expect \"Eight weeks calved\" met\n";

    [Theory]
    [InlineData("no-animal", "  judged on 2026-10-19\n" + Met)]
    [InlineData("not-judged", "  cow born 2021-08-10\n  calving 2026-09-07\n" + Met)]
    [InlineData("expects-nothing", "  " + Cow)]
    [InlineData("answers", "  " + Cow + "  expect \"Eight weeks calved\" ready\n  expect recipients met\n  expect cycling met\n  expect \"Settled in milk\" does not apply\n")]
    [InlineData("clauses", "  " + Cow + "  expect \"Eight weeks calved\" met, not before 2026-10-19\n  expect cycling true, from 2026-10-19, from 2026-10-20\n")]
    [InlineData("names", "  " + Cow + "  expect \"Eight weeks calve\" met\n  expect recipient ready\n  expect heat true\n  expect recipients no, because of \"Nine weeks\"\n  expect cycling true, because of heats and heet, missing cycling\n")]
    [InlineData("days", "  cow born 2021-08-10\n  calving 2021-08-09\n  heat 2026-10-20\n  judged from 2026-10-19 to 2026-10-18\n" + Met)]
    [InlineData("after-records", "  " + Cow + "  records to 2026-10-01\n  heat 2026-10-02\n" + Met)]
    [InlineData("cow-without-calving", "  cow born 2021-08-10\n  judged on 2026-10-19\n" + Met)]
    [InlineData("heifer-has-calved", "  heifer born 2021-08-10\n  calving 2026-09-07\n  judged on 2026-10-19\n" + Met)]
    [InlineData("heifer-with-parity", "  heifer born 2021-08-10\n  parity 2\n  judged on 2026-10-19\n" + Met)]
    [InlineData("no-mob", "  " + Cow + "  5 of her mob serum copper 2026-10-01 8 umol/L\n" + Met)]
    [InlineData("mob", "  " + Cow + "  mob Back since 2025-01-01\n  0 of her mob serum copper 2026-10-01 8 umol/L\n  5 of her mob BVD virus 2026-10-01 negative\n  5 of her mob serum copper 8 umol/L\n" + Met)]
    [InlineData("rank", "  " + Cow + "  rank 5 of 3 by breeding index\n" + Met)]
    [InlineData("rank-by-words", "  " + Cow + "  rank 5 of 100 by breed\n" + Met)]
    [InlineData("records", "  " + Cow + "  heat\n  heat 2026-10-01 seen\n  BVD virus 2026-10-01\n  BVD virus 2026-10-01 negativ\n  breed\n  breed Jersy\n  breed 2026-10-01\n  breed Jersey\n  breed Friesian\n  heet 2026-10-01\n  cycling 2026-10-01\n" + Met)]
    [InlineData("dates", "  " + Cow + "  collection on 2026-10-12\n  collection on 2026-10-13\n  collecting on 2026-10-12\n  heat on 19.10.2026\n" + Met)]
    [InlineData("twice", "  " + Cow + "  judged on 2026-10-20\n  heifer born 2021-08-10\n" + Met)]
    [InlineData("not-kept", "  " + Cow + "  not kept heat, breed\n" + Met)]
    [InlineData("unreadable", "  " + Cow + "  expect \"Eight weeks calved\" mett\n  calving 2026-09-07 at night\n")]
    public void A_wrong_example_is_told(string name, string lines) =>
        Snapshot.Verify(DiagnosticText.Of(Rules.Read(Base + "example \"It\"\n" + lines).Problems), name);

    [Fact]
    public void Two_examples_of_one_name_are_told() =>
        Snapshot.Verify(DiagnosticText.Of(Rules.Read(Base + $"example \"It\"\n  {Cow}{Met}example \"it\"\n  {Cow}{Met}").Problems));

    [Fact]
    public void A_wrong_example_breaks_no_list()
    {
        var reading = Rules.Read(Base + $"example \"It\"\n  {Cow}  expect \"Eight weeks calved\" mett\n  heet 2026-10-01\n");
        reading.HasErrors.ShouldBeTrue();
        reading.Rulebook.BrokenParts.ShouldBeEmpty();
        reading.Rulebook.Examples.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("rul \"Sound\"\n  needs no mastitis in the last 30 days\n  because \".\"\n")]
    [InlineData("safty rule \"Sound\"\n  needs no mastitis in the last 30 days\n  because \".\"\n")]
    [InlineData("needs no mastitis in the last 30 days\n  because \".\"\n")]
    public void What_may_have_been_a_rule_below_an_example_breaks_the_list(string lines) =>
        Rules.Read(Base + $"example \"It\"\n  {Cow}{Met}{lines}").Rulebook.BrokenParts.ShouldNotBeEmpty();
}
