using Byrelaw.Language.Tests.Support;

namespace Byrelaw.Language.Tests;

public sealed class SmokeTests
{
    [Fact]
    public void Reads()
    {
        var text = Rules.Words + """
            define empty
              any of
                - no mating or transfer since last calving
                - latest pregnancy test from 28 days after last mating or transfer is negative
            define cycling
              at least 1 heat or mating since last calving
            rules for recipients
            rule "Eight weeks calved"
              applies to cows
              needs at least 56 days since last calving
              because "The uterus." # why
                "It shrinks."
              source "common practice"
            safety rule "Not in calf"
              needs empty
              because "x"
            prefer "Settled in milk"
              between 60 and 120 days since last calving
              counts 2
              because "y"
            change "Eight weeks calved"
              needs at least 63 days since last calving
              because "Cows were slow."
              agreed by "herd vet" on 2026-06-14
            waive "Eight weeks calved" for "1423"
              until 2026-10-31
              because "Bolus"
              agreed by "herd vet" on 2026-09-20
            records "records"
              up to 2026-09-20
              complete for calving, heat, mating, transfer, bull in, bull out since 2024-06-01
              leave out foot trim
            programme "Withy Bend, spring 2026"
              collection on 2026-10-12
              transfer 8 days after collection, over 2 days
              date planned start of mating on 2026-10-26
              choose recipients from females, judged from first transfer to final transfer
            """;
        Rules.Problems(text).ShouldBe("");
        var canonical = Canonical.CanonicalText.Of(Rules.Read(text).Rulebook);
        Rules.Problems(canonical).ShouldBe("");
        Canonical.CanonicalText.Of(Rules.Read(canonical).Rulebook).ShouldBe(canonical);
    }

    [Theory]
    [InlineData("no mastitis or metritis in the last 30 days")]
    [InlineData("at least 1 heat or mating since last calving")]
    [InlineData("at most 2 transfers since last calving")]
    [InlineData("no positive BVD virus ever")]
    [InlineData("at least 56 days since last calving")]
    [InlineData("between 6 and 8 days since last heat")]
    [InlineData("age at least 13 months")]
    [InlineData("parity at most 6")]
    [InlineData("breed is one of Friesian, Jersey")]
    [InlineData("latest body condition in the last 45 days between 4.0 and 5.5")]
    [InlineData("change in body condition since last calving at least -1")]
    [InlineData("latest weight in the last 60 days at least 60% of mature weight")]
    [InlineData("average liver copper of her mob in the last 90 days, from at least 5 animals, at least 95 umol/kg")]
    [InlineData("at most 1 of her mob with serum copper in the last 60 days less than 7 umol/L, from at least 10 animals")]
    [InlineData("latest BVD virus is negative")]
    [InlineData("latest uterine check from 21 days after last calving is clean")]
    [InlineData("running with bull")]
    [InlineData("not running with bull in the last 35 days")]
    [InlineData("breeding index not in the top 20% of the herd")]
    [InlineData("official identity is recorded")]
    [InlineData("no bull in in the last 30 days")]
    public void Conditions(string condition) => Rules.Condition(condition).ShouldNotBeNull();
}
