namespace Byrelaw.Language.Tests.Blocks;

/// <summary>What a line that cannot be read breaks. Doubt never lets an animal through.</summary>
public sealed class BrokenBlockTests
{
    private const string Two = """
        rules for recipients
        rule "A"
          needs no heat ever
          because "a"
        rule "B"
          needs no mating ever
          because "b"

        """;

    [Theory]
    [InlineData("  needs no heat ever", "  needs no heet ever")]
    [InlineData("  needs no heat ever", "  needs no heat ever ever and")]
    [InlineData("  needs no heat ever", "  neds no heat ever")]
    [InlineData("  needs no heat ever", "  needs no heat >= 5")]
    [InlineData("  needs no heat ever", "")]
    [InlineData("  because \"a\"", "  because \"a")]
    [InlineData("  because \"a\"", "  until 2026-10-10")]
    [InlineData("  because \"a\"", "  - no heat ever")]
    [InlineData("  because \"a\"", "  applies to coows")]
    [InlineData("  because \"a\"", "  if not known maybe")]
    public void A_broken_line_breaks_its_rule_and_no_other(string line, string broken)
    {
        var rulebook = Broken(Two.Replace(line, broken, StringComparison.Ordinal)).Rulebook;
        rulebook.Rules.Select(rule => (rule.Name, rule.IsBroken)).ShouldBe([("A", true), ("B", false)]);
    }

    [Theory]
    [InlineData("ruel \"B\"")]
    [InlineData("(rule \"B\"")]
    [InlineData("rule B")]
    [InlineData("rule \"B")]
    public void A_head_that_cannot_be_read_breaks_its_list(string head)
    {
        var rulebook = Broken(Two.Replace("rule \"B\"", head, StringComparison.Ordinal)).Rulebook;
        rulebook.Rules.Select(rule => rule.Name).ShouldBe(["A"]);
        rulebook.BrokenParts.Single().List.ShouldBe("recipients");
        rulebook.BrokenParts.Single().Span.Line.ShouldBe(RuleB);
    }

    [Fact]
    public void A_head_that_shrank_to_its_name_runs_on_from_the_reason_above_and_breaks_that_rule()
    {
        var reading = Broken(Two.Replace("rule \"B\"", "\"B\"", StringComparison.Ordinal));
        reading.Problems.Select(problem => problem.Code).ShouldBe(["B0404", "B0404"]);
        reading.Rulebook.Rules.Select(rule => (rule.Name, rule.IsBroken)).ShouldBe([("A", true)]);
    }

    [Theory]
    [InlineData("rulse for recipients")]
    [InlineData("rules four recipients")]
    [InlineData("rules for")]
    public void A_list_whose_name_cannot_be_read_breaks_every_list(string head)
    {
        var rulebook = Broken(Two.Replace("rules for recipients", head, StringComparison.Ordinal)).Rulebook;
        rulebook.BrokenParts.ShouldContain(part => part.List == null);
    }

    [Fact]
    public void A_line_that_may_have_been_another_list_breaks_every_list()
    {
        var rulebook = Broken(Two.Replace("rule \"B\"", "rulse for donors\nrule \"B\"", StringComparison.Ordinal)).Rulebook;
        rulebook.BrokenParts.Single().List.ShouldBeNull();
        rulebook.Rules.Select(rule => (rule.Name, rule.IsBroken)).ShouldBe([("A", true), ("B", false)]);
    }

    [Fact]
    public void The_lines_after_an_unreadable_one_are_read_for_problems_and_do_not_count()
    {
        var reading = Broken(Two.Replace("rule \"B\"\n  needs no mating ever", "ruel \"B\"\n  needs no maiting ever", StringComparison.Ordinal));
        reading.Problems.Select(problem => problem.Code).ShouldBe(["B0401", "B0204"]);
        reading.Rulebook.Rules.Select(rule => rule.Name).ShouldBe(["A"]);
    }

    [Fact]
    public void A_broken_bullet_breaks_its_list_and_a_broken_define_its_users()
    {
        var rulebook = Broken("""
            define a
              any of
                - no heat ever
                - no heet ever
            define b
              not a
            rules for recipients
            rule "A"
              needs b
              because "a"
            rule "B"
              applies to b
              needs no heat ever
              because "b"
            prefer "C"
              b
              because "c"
            """).Rulebook;
        rulebook.WithoutFloor().Defines.Select(define => define.IsBroken).ShouldBe([true, true]);
        rulebook.Defines[0].Condition.ShouldBeOfType<ListCondition>().Items[1].ShouldBeOfType<BrokenCondition>();
        rulebook.Rules.ShouldAllBe(rule => rule.IsBroken);
        rulebook.Prefers.ShouldAllBe(prefer => prefer.IsBroken);
    }

    [Fact]
    public void A_word_that_breaks_breaks_what_uses_it_and_nothing_more()
    {
        var rulebook = Broken("event womb trouble also\n" + Two.Replace("no heat ever", "no womb trouble ever", StringComparison.Ordinal)).Rulebook;
        rulebook.Rules.Select(rule => rule.IsBroken).ShouldBe([true, false]);
        rulebook.BrokenParts.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("change \"A\"\n  needs no heet ever\n  because \"c\"\n  agreed by \"vet\" on 2026-06-14\n")]
    [InlineData("change \"A\"\n  needs no mating ever\n  because \"c\"\n")]
    [InlineData("change \"A\"\n  needs no mating ever\n  agreed by \"vet\" on 14 June 2026\n")]
    public void A_broken_change_breaks_its_target(string change)
    {
        var rulebook = Broken(Two + change).Rulebook;
        rulebook.Rules.Select(rule => rule.IsBroken).ShouldBe([true, false]);
    }

    [Theory]
    [InlineData("change A\n  needs no mating ever\n")]
    [InlineData("change \"C\"\n  needs no mating ever\n  because \"c\"\n  agreed by \"vet\" on 2026-06-14\n")]
    public void A_change_whose_target_cannot_be_read_breaks_every_list(string change) =>
        Broken(Two + change).Rulebook.BrokenParts.Single().List.ShouldBeNull();

    [Theory]
    [InlineData("drop \"A\"\n  because \"c\"\n")]
    [InlineData("drop \"A\"\n  because \"c\"\n  agreed by \"vet\"\n")]
    [InlineData("drop A\n  because \"c\"\n  agreed by \"vet\" on 2026-06-14\n")]
    [InlineData("waive \"A\" for \"1\"\n  until 2026-10-40\n  because \"c\"\n  agreed by \"vet\" on 2026-06-14\n")]
    [InlineData("waive \"A\" for 1\n  until 2026-10-31\n  because \"c\"\n  agreed by \"vet\" on 2026-06-14\n")]
    public void A_broken_drop_or_waiver_does_nothing(string layer)
    {
        var rulebook = Broken(Two + layer).Rulebook;
        rulebook.Rules.Select(rule => (rule.Name, rule.IsBroken)).ShouldBe([("A", false), ("B", false)]);
        (rulebook.Drops.Length, rulebook.Waivers.Length).ShouldBe((0, 0));
    }

    [Theory]
    [InlineData("  complete for heet since 2024-06-01")]
    [InlineData("  complete for mating 2024-06-01")]
    [InlineData("  up to 20 September 2026")]
    [InlineData("  compleet for mating since 2024-06-01")]
    public void A_broken_line_under_records_leaves_nothing_complete(string line)
    {
        var records = Broken($"records \"records\"\n  complete for heat since 2024-06-01\n{line}\n").Rulebook.Records;
        records.ShouldNotBeNull().Complete.ShouldBeEmpty();
    }

    [Fact]
    public void A_used_file_that_cannot_be_read_breaks_every_list()
    {
        Broken("use \"nowhere.byre\"\n" + Two).Rulebook.BrokenParts.Single().List.ShouldBeNull();
        Broken("use nowhere\n" + Two).Rulebook.BrokenParts.Single().List.ShouldBeNull();
        var latin = new RuleFilesInMemory().Add("farm.byre", "use \"b.byre\"\n").Add("b.byre", [0xE9]);
        Rules.Read(latin).Rulebook.BrokenParts.Single().List.ShouldBeNull();
    }

    [Fact]
    public void A_list_without_rules_is_broken()
    {
        var rulebook = Broken("programme \"P\"\n  collection on 2026-10-12\n  choose donors from cows, judged on collection, for looking only\n").Rulebook;
        rulebook.BrokenParts.Single().List.ShouldBe("donors");
    }

    [Fact]
    public void Every_problem_of_a_file_is_told_in_one_run()
    {
        var codes = Broken(Two.Replace("heat", "heet", StringComparison.Ordinal).Replace("mating", "maiting", StringComparison.Ordinal) + "drop \"C\"\n  because \"x\n")
            .Problems.Select(problem => problem.Code);
        codes.ShouldBe(["B0204", "B0204", "B0701", "B0101"]);
    }

    private static int RuleB => Rules.Words.Count(c => c == '\n') + 5;

    private static RulebookReading Broken(string text)
    {
        var reading = Rules.Read(Rules.Words + text);
        reading.HasErrors.ShouldBeTrue();
        return reading;
    }
}
