namespace Byrelaw.Planning.Tests.Recipients;

public sealed class UseChainTests
{
    [Fact]
    public void Two_of_21_cycling_animals_come_in_heat_in_a_two_day_window()
    {
        // One heat in 21 days, any day as likely as another: 1/21 a day (in heat on any one day "5 per cent of the herd", FAO manual on embryo
        // transfer in buffalo, chapter on heat).
        var chain = UseChain.OfNaturalHeat(Methods.NaturalHeat with { HeatSeen = null, Accepted = null }, 2, null);

        chain.Used.Share.ShouldBe(2.0 / 21, 1e-12);
        chain.Losses.Single().Step.ShouldBe(UseStep.InTheWindow);
    }

    [Fact]
    public void About_65_in_a_hundred_are_usable_after_one_prostaglandin_over_a_wide_window()
    {
        // Common practice, no source: "about 65%". 70% in heat and 90% of those accepted come to 63%.
        UseChain.OfTreatment(Methods.ProstaglandinOnce, _ => true).Used.Share.ShouldBe(0.65, 0.025);
    }

    [Fact]
    public void A_narrow_window_takes_fewer_after_one_prostaglandin()
    {
        // Common practice, no source: "about 45%" where only two days' heats serve.
        UseChain.OfTreatment(Methods.ProstaglandinOnce, day => day is 3 or 4).Used.Share.ShouldBe(0.45, 0.015);
        UseChain.OfTreatment(Methods.ProstaglandinOnce, day => day is 12).Used.Share.ShouldBe(0);
    }

    [Fact]
    public void Each_loss_keeps_its_own_denominator()
    {
        var method = Methods.ProstaglandinOnce with { HeatSeen = Methods.Counted(34, 40) };

        var chain = UseChain.OfTreatment(method, day => day is 3 or 4);

        chain.Losses.Select(loss => (loss.Step, Math.Round(loss.Kept.Share, 9), loss.Kept.Weight)).ShouldBe(
        [
            (UseStep.InHeat, 0.7, null), (UseStep.InTheWindow, 0.7, null), (UseStep.Seen, 0.85, 40.0), (UseStep.Accepted, 0.9, null),
        ]);
        chain.Of(100).Select(counts => Math.Round(counts.Mean, 6)).ShouldBe([70, 49, 41.65, 37.485]);
    }

    [Fact]
    public void A_timed_method_asks_for_no_heat()
    {
        UseChain.OfTreatment(Methods.Insert, day => day == 9).Losses.Single().Step.ShouldBe(UseStep.Accepted);
        UseChain.OfTreatment(Methods.Insert, day => day == 9).Used.ShouldBe(new Rate(0.8, 30));
        UseChain.OfTreatment(Methods.Insert, day => day == 10).Used.Share.ShouldBe(0);
    }

    [Fact]
    public void Only_cycling_animals_come_in_natural_heat() =>
        UseChain.OfNaturalHeat(Methods.NaturalHeat, 4, new(0.85, 40)).Used.Share.ShouldBe(0.85 * 4 / 21 * 0.8 * 0.88, 1e-12);

    [Theory]
    [InlineData(12)]
    [InlineData(40)]
    [InlineData(120)]
    public void One_rate_for_the_whole_chain_is_close_to_its_steps_taken_one_by_one(int animals)
    {
        var method = Methods.ProstaglandinOnce with
        {
            InHeat = new(Methods.Share(0.7, 20), Methods.ProstaglandinOnce.InHeat!.Days),
            HeatSeen = Methods.Share(0.85, 15),
            Accepted = Methods.Share(0.9, 10),
        };
        var chain = UseChain.OfTreatment(method, day => day is 3 or 4 or 5);

        Examples.Apart(Counts.Of(animals, chain.Used), chain.Of(animals)[^1]).ShouldBeLessThan(0.01);
    }
}
