using Byrelaw.Planning.Yardsticks;
using static Byrelaw.Planning.Tests.Seasons.WithyBend;

namespace Byrelaw.Planning.Tests.Yardsticks;

public sealed class YardstickTests
{
    [Fact]
    public void The_fewest_parts_without_which_the_plan_comes_near_are_told()
    {
        // 70 x 85 x 90 in a hundred are 54; without "seen" it is 63, which is within a tenth of 65.
        var held = Used(0.65, 0.7, 0.85, 0.9);

        held.Plan!.Value.ShouldBe(0.5355, 1e-9);
        held.Parts.Select(part => Math.Round(part.SoFar, 4)).ShouldBe([0.7, 0.595, 0.5355]);
        held.Without!.Value.Single().Step.ShouldBe(UseStep.Seen);
        held.Left(held.Without.Value).ShouldBe(0.63, 1e-9);
    }

    [Theory]
    [InlineData(0.54, 0)]
    [InlineData(0.59, 0)]
    [InlineData(0.93, 2)]
    public void As_many_as_it_takes_and_no_more(double said, int parts) => Used(said, 0.7, 0.85, 0.9).Without!.Value.Length.ShouldBe(parts);

    [Fact]
    public void Below_all_that_could_be_left_out_no_part_explains_it() => Used(0.30, 0.7, 0.85, 0.9).Without.ShouldBeNull();

    [Fact]
    public void A_cost_is_held_against_all_that_is_paid_over_all_transfers()
    {
        var plans = Plans with { Yardsticks = [new(null, null, Nzd(400), "So a team quotes.", null, default)] };
        var numbers = SeasonPlanner.Plan(Inputs with { Plans = plans });

        var held = YardsticksHeld.Of(plans, [], numbers).Single();

        held.Plan!.Value.ShouldBe(numbers.Budget!.Total / numbers.Forecast!.At(Stage.Transfers).Mean, 1e-9);
        held.Parts[^1].SoFar.ShouldBe(held.Plan.Value, 1e-9);
        held.Parts.ShouldAllBe(part => part.Charge!.Price > 0);
        held.IsAtLeast.ShouldBeFalse();
        YardsticksHeld.Of(plans, [], SeasonPlanner.Plan(Inputs with { Plans = plans, Animals = 0 })).Single().Plan.ShouldBeNull("nothing is transferred");
    }

    private static YardstickHeld Used(double said, params double[] shares)
    {
        UseStep[] steps = [UseStep.InHeat, UseStep.Seen, UseStep.Accepted];
        var product = 1.0;
        return YardstickHeld.Of(new("Prostaglandin once", said, null, "So people say.", null, default), [.. shares.Select((share, i) => new YardstickPart(steps[i], null, share, product *= share))]);
    }
}
