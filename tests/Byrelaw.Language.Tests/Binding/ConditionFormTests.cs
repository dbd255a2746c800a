namespace Byrelaw.Language.Tests.Binding;

/// <summary>Every form of a condition that the language has, and what it is bound to.</summary>
public sealed class ConditionFormTests
{
    [Theory]
    [InlineData("no mastitis or metritis in the last 30 days", typeof(CountCondition))]
    [InlineData("at least 1 heat or mating since last calving", typeof(CountCondition))]
    [InlineData("at most 2 transfers since last calving", typeof(CountCondition))]
    [InlineData("no positive BVD virus ever", typeof(CountCondition))]
    [InlineData("exactly 1 positive BVD virus or mastitis since birth", typeof(CountCondition))]
    [InlineData("between 1 and 3 heats since last calving", typeof(CountCondition))]
    [InlineData("at least 56 days since last calving", typeof(TimeSinceCondition))]
    [InlineData("between 6 and 8 days since last heat", typeof(TimeSinceCondition))]
    [InlineData("between 4 weeks and 3 months since last uterine check or weight", typeof(TimeSinceCondition))]
    [InlineData("less than 1 year since last heat or mating", typeof(TimeSinceCondition))]
    [InlineData("age at least 13 months", typeof(AgeCondition))]
    [InlineData("parity at most 6", typeof(ParityCondition))]
    [InlineData("breeding index more than 120.5", typeof(FactNumberCondition))]
    [InlineData("mature weight between 400 and 600 kg", typeof(FactNumberCondition))]
    [InlineData("breed is one of Friesian, Jersey", typeof(FactTextCondition))]
    [InlineData("breed is not Jersey", typeof(FactTextCondition))]
    [InlineData("dam genomic date is 2026-02-01", typeof(FactDateCondition))]
    [InlineData("latest body condition in the last 45 days between 4 and 5.5", typeof(MeasuredCondition))]
    [InlineData("lowest body condition since last calving at least 3", typeof(MeasuredCondition))]
    [InlineData("change in body condition since last calving between -1 and 1", typeof(MeasuredCondition))]
    [InlineData("lost at most 1 body condition since last calving", typeof(MeasuredCondition))]
    [InlineData("latest weight in the last 60 days at least 60% of mature weight", typeof(MeasuredCondition))]
    [InlineData("latest weight in the last 60 days between 60% of mature weight and 600 kg", typeof(MeasuredCondition))]
    [InlineData("average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg", typeof(MobMeasuredCondition))]
    [InlineData("at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals", typeof(MobCountCondition))]
    [InlineData("latest BVD virus ever is negative", typeof(TestCondition))]
    [InlineData("latest uterine check from 21 days after last calving is not one of clean, discharge", typeof(TestCondition))]
    [InlineData("running with bull", typeof(SpellCondition))]
    [InlineData("not running with bull in the last 35 days", typeof(SpellCondition))]
    [InlineData("breeding index not in the top 20% of the herd", typeof(StandingCondition))]
    [InlineData("breeding index in the top 12.5% of cows", typeof(StandingCondition))]
    [InlineData("official identity is recorded", typeof(RecordedCondition))]
    [InlineData("official identity is not recorded", typeof(RecordedCondition))]
    [InlineData("cycling", typeof(NamedCondition))]
    [InlineData("not cycling", typeof(NamedCondition))]
    public void A_form_reads_and_prints_as_it_is_written(string written, Type bound)
    {
        var condition = Rules.Condition(written, "define cycling\n  at least 1 heat since last calving\n");
        condition.ShouldBeOfType(bound);
        CanonicalText.Of(condition).ShouldBe(written);
    }

    [Theory]
    [InlineData("in the last 30 days", typeof(InTheLast))]
    [InlineData("at least 28 days ago", typeof(AtLeastAgo))]
    [InlineData("between 28 and 365 days ago", typeof(BetweenAgo))]
    [InlineData("between 4 weeks and 1 year ago", typeof(BetweenAgo))]
    [InlineData("in the 60 days before collection", typeof(BeforeDate))]
    [InlineData("in the 2 weeks before 2026-10-12", typeof(BeforeDate))]
    [InlineData("since last calving or abortion", typeof(SinceLast))]
    [InlineData("from 21 days after last calving", typeof(FromAfterLast))]
    [InlineData("in the 21 days after last calving", typeof(DaysAfter))]
    [InlineData("in the 21 days after first transfer", typeof(DaysAfter))]
    [InlineData("before first transfer", typeof(BeforeDay))]
    [InlineData("before last calving or mating", typeof(BeforeDay))]
    [InlineData("since 2026-06-01", typeof(SinceDate))]
    [InlineData("since first transfer", typeof(SinceDate))]
    [InlineData("since birth", typeof(SinceBirth))]
    [InlineData("ever", typeof(Ever))]
    public void A_window_reads_and_prints_as_it_is_written(string written, Type bound)
    {
        var condition = Rules.Condition("no heat " + written, "event abortion\n").ShouldBeOfType<CountCondition>();
        condition.Windows.ShouldHaveSingleItem().ShouldBeOfType(bound);
        CanonicalText.Of(condition).ShouldBe("no heat " + written);
    }

    [Theory]
    [InlineData("No Mastitis IN THE LAST 30 Days", "no mastitis in the last 30 days")]
    [InlineData("no oestrus in the last 30 days", "no heat in the last 30 days")]
    [InlineData("no heats or oestrus in the last 1 days", "no heat in the last 1 day")]
    [InlineData("at least 2 heat since last calved", "at least 2 heats since last calving")]
    [InlineData("latest serum copper in the last 60 days at least 0.007 mmol/L", "latest serum copper in the last 60 days at least 7 umol/L")]
    [InlineData("latest serum copper in the last 60 days at least 444.822 ug/L", "latest serum copper in the last 60 days at least 7 umol/L")]
    [InlineData("latest body condition at least 4 in the last 45 days", "latest body condition in the last 45 days at least 4")]
    [InlineData("latest body condition in the last 45 days, at least 4.50", "latest body condition in the last 45 days at least 4.5")]
    [InlineData("latest serum copper in the last 60 days between 7 umol/L and 18 µmol/L", "latest serum copper in the last 60 days between 7 and 18 umol/L")]
    public void What_may_be_written_several_ways_prints_one_way(string written, string printed) =>
        CanonicalText.Of(Rules.Condition(written)).ShouldBe(printed);

    [Fact]
    public void A_list_prints_on_one_line_for_pages()
    {
        var rulebook = Rules.Good(Rules.Words + "define empty\n  any of\n    - no mating or transfer since last calving\n    - not running with bull\n");
        CanonicalText.Of(rulebook.Defines[0].Condition).ShouldBe("either no mating or transfer since last calving; or not running with bull");
    }
}
