using Byrelaw.Planning.Chances;

namespace Byrelaw.Planning.Tests.Chances;

public sealed class RateTests
{
    [Fact]
    public void A_counted_share_weighs_as_many_animals_as_were_counted()
    {
        var rate = Rate.From(36, 80);

        rate.Share.ShouldBe(0.45);
        rate.Successes.ShouldBe(36, 1e-12);
        rate.Failures.ShouldBe(44, 1e-12);
    }
}
