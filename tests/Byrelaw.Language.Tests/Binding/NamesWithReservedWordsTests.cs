namespace Byrelaw.Language.Tests.Binding;

public sealed class NamesWithReservedWordsTests
{
    [Theory]
    [InlineData("no bull in in the last 30 days")]
    [InlineData("no bull in or bull out since last bull in")]
    [InlineData("no \"bull in\" in the last 30 days")]
    public void A_declared_name_is_recognised_as_a_whole(string condition) => Rules.Condition(condition).ShouldBeOfType<CountCondition>();

    [Fact]
    public void A_name_declared_in_one_file_is_recognised_in_another()
    {
        var reading = Rules.Read(new RuleFilesInMemory()
            .Add("farm.byre", "use \"words.byre\"\ndefine it\n  no sign of heat in the last 3 days\n")
            .Add("words.byre", "event sign of heat\n"));
        CanonicalText.Of(Rules.Good(reading).Defines[0].Condition).ShouldBe("no sign of heat in the last 3 days");
    }

    [Fact]
    public void A_define_and_a_date_may_hold_reserved_words_too()
    {
        var rulebook = Rules.Good(Rules.Words + """
            define away from the bull
              not running with bull in the last 35 days
            rules for recipients
            rule "A"
              applies to away from the bull
              needs no heat in the 60 days before planned start of mating
              because "b"
            programme "P"
              date planned start of mating on 2026-10-26
              choose recipients from cows, judged on planned start of mating, for looking only
            """);
        rulebook.Rules.Single().AppliesTo.ShouldNotBeNull().Define.ShouldBe("away from the bull");
        rulebook.Programme.ShouldNotBeNull().Dates.Single().Name.ShouldBe("planned start of mating");
    }

    [Fact]
    public void The_longest_name_wins()
    {
        var condition = Rules.Condition("no bull in milk in the last 3 days", "event bull in milk\n").ShouldBeOfType<CountCondition>();
        condition.Counted.Single().Kind.Name.ShouldBe("bull in milk");
    }

    [Fact]
    public void A_name_that_holds_a_reserved_word_at_its_start_is_quoted()
    {
        var rulebook = Rules.Good("event \"no heat\"\nevent heat\ndefine it\n  no heat ever\ndefine that\n  no \"no heat\" ever\n");
        rulebook.Defines.Select(define => define.Condition).Cast<CountCondition>().Select(count => count.Counted.Single().Kind.Name).ShouldBe(["heat", "no heat"]);
    }
}
