namespace Byrelaw.Workshop.Tests.Comparing;

public sealed class ComparisonTests
{
    private const string Words = """
        event calving
        event heat
        event mastitis
        measure weight in kg
        define cycling
          at least 1 heat since last calving

        rules for recipients

        """;

    private const string EightWeeks = """
        rule "Eight weeks calved"
          needs at least 56 days since last calving
          because "a"

        """;

    [Fact]
    public void A_number_is_told_from_the_rest() => Of(EightWeeks, EightWeeks.Replace("56", "63", StringComparison.Ordinal))
        .ShouldBe(["Changed Eight weeks calved: Number at least 56 days > at least 63 days"]);

    [Fact]
    public void A_window_is_told_from_the_number() => Of(
        "rule \"Udder\"\n  needs no mastitis in the last 30 days\n  because \"a\"\n", "rule \"Udder\"\n  needs no mastitis in the last 60 days\n  because \"a\"\n")
        .ShouldBe(["Changed Udder: Window in the last 30 days > in the last 60 days"]);

    [Fact]
    public void A_rule_with_another_name_and_the_same_demand_is_surely_the_same() => Of(EightWeeks, EightWeeks.Replace("Eight weeks calved", "Fifty-six days", StringComparison.Ordinal))
        .ShouldBe(["Changed Fifty-six days (Eight weeks calved, SameMeaning):"]);

    [Fact]
    public void A_rule_with_another_name_and_another_number_is_probably_the_same() => Of(
        EightWeeks, EightWeeks.Replace("Eight weeks calved", "Nine weeks calved", StringComparison.Ordinal).Replace("56", "63", StringComparison.Ordinal))
        .ShouldBe(["Changed Nine weeks calved (Eight weeks calved, LikeMeaning): Number at least 56 days > at least 63 days"]);

    [Fact]
    public void A_changed_define_names_the_rules_that_speak_of_it()
    {
        const string Uses = "rule \"Cycling\"\n  needs cycling\n  because \"a\"\n";
        var between = Between(Uses, Uses, Words.Replace("at least 1 heat", "at least 2 heat", StringComparison.Ordinal));
        between.Differences.ShouldHaveSingleItem().ShouldBeOfType<DefineDifference>().Touches.ShouldBe(["Cycling"]);
    }

    [Fact]
    public void A_renamed_define_and_a_renamed_word_are_not_changes_of_the_rules_that_use_them()
    {
        const string Uses = "rule \"Cycling\"\n  needs cycling\n  because \"a\"\n";
        var between = Between(Uses, Uses.Replace("needs cycling", "needs in season", StringComparison.Ordinal).Replace("in season", "seasonal", StringComparison.Ordinal),
            Words.Replace("define cycling", "define seasonal", StringComparison.Ordinal).Replace("event heat", "event oestrus also heat", StringComparison.Ordinal));
        between.Differences.Select(difference => $"{difference.GetType().Name} {difference.OldName} > {difference.NewName}")
            .ShouldBe(["WordDifference heat > oestrus", "DefineDifference cycling > seasonal"]);
    }

    [Fact]
    public void Another_unit_is_a_difference_of_the_word()
    {
        const string Weighed = "rule \"Weighed\"\n  needs latest weight in the last 60 days at least 300 kg\n  because \"a\"\n";
        var between = Between(Weighed, Weighed, Words.Replace("in kg", "in g", StringComparison.Ordinal));
        between.Differences[0].ShouldBeOfType<WordDifference>().Details.ShouldBe([new Detail(Aspect.Unit, "in kg", "in g")]);
    }

    [Fact]
    public void A_waiver_is_matched_by_rule_and_animal()
    {
        const string Waived = EightWeeks + "waive \"Eight weeks calved\" for \"12\"\n  until 2026-10-31\n  because \"b\"\n  agreed by \"vet\" on 2026-09-01\n";
        Of(Waived, Waived.Replace("10-31", "11-15", StringComparison.Ordinal)).ShouldBe(["Changed Eight weeks calved: Until 2026-10-31 > 2026-11-15"]);
        Of(EightWeeks, Waived).ShouldBe(["Added Eight weeks calved:"]);
    }

    [Fact]
    public void A_dropped_rule_is_no_longer_in_force()
    {
        var dropped = Between(EightWeeks, EightWeeks + "drop \"Eight weeks calved\"\n  because \"b\"\n  agreed by \"vet\" on 2026-09-01\n")
            .Differences.ShouldHaveSingleItem().ShouldBeOfType<RuleDifference>();
        dropped.New.ShouldBeNull();
        dropped.NewDrop.ShouldNotBeNull().Because.ShouldBe("b");
    }

    private static List<string> Of(string old, string @new) => [.. Between(old, @new).Differences.Select(Told)];

    private static string Told(Difference difference) =>
        $"{difference.Happened} {difference.Name}{(difference.IsRenamed ? $" ({difference.OldName}, {difference.Sameness})" : "")}:"
        + string.Concat(difference.Details.Select(detail => $" {detail.Aspect} {detail.Was} > {detail.Is}"));

    private static RulebookComparison Between(string old, string @new, string? newWords = null) =>
        RulebookComparison.Of(Rules.Read(Words + old).Rulebook, Rules.Read((newWords ?? Words) + @new).Rulebook);
}
