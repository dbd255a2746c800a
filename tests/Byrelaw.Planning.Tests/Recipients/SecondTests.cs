namespace Byrelaw.Planning.Tests.Recipients;

public sealed class SecondTests
{
    [Fact]
    public void Those_not_seen_by_day_5_are_treated_again_on_days_11_to_14()
    {
        var used = UseChain.OfTreatment(Methods.ProstaglandinOnce, day => day is 3 or 4).Used;

        var second = Second.Of(Methods.ProstaglandinOnce, used)!;

        second.SeenInTime.Share.ShouldBe(0.7, 1e-12);
        second.TreatedAgain.Share.ShouldBe(0.3, 1e-12);
        second.UsedOfAll.Share.ShouldBe(0.3 * used.Share, 1e-12);
        (second.LaterFrom, second.LaterTo).ShouldBe((11, 14));
    }

    [Fact]
    public void A_heat_that_nobody_saw_is_one_that_is_treated_again()
    {
        var method = Methods.ProstaglandinOnce with { HeatSeen = Methods.Share(0.85) };

        Second.Of(method, new(0.4))!.TreatedAgain.Share.ShouldBe(1 - (0.7 * 0.85), 1e-12);
        Second.Of(Methods.Insert, new(0.8)).ShouldBeNull();
    }
}
