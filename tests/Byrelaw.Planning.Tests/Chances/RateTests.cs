namespace Byrelaw.Planning.Tests.Chances;

public sealed class RateTests
{
    [Fact]
    public void A_counted_share_weighs_as_many_animals_as_were_counted() => Rate.From(36, 80).ShouldBe(new Rate(0.45, 80));

    [Fact]
    public void A_share_counted_among_more_animals_is_surer()
    {
        // A beta distribution with the parameters 36 and 44 has the variance ab / ((a + b)² (a + b + 1)).
        Rate.From(36, 80).Variance.ShouldBe(36.0 * 44 / (80 * 80 * 81), 1e-15);
        (Rate.From(360, 800).Quantile(0.9) - Rate.From(360, 800).Quantile(0.1))
            .ShouldBeLessThan(Rate.From(36, 80).Quantile(0.9) - Rate.From(36, 80).Quantile(0.1));
    }

    [Fact]
    public void A_share_that_is_not_doubted_is_the_same_at_its_low_and_at_its_high_end()
    {
        new Rate(0.45).Quantile(0.1).ShouldBe(0.45);
        new Rate(0.45).Quantile(0.9).ShouldBe(0.45);
    }

    [Fact]
    public void Steps_one_after_the_other_multiply_and_add_their_doubts()
    {
        var used = new Rate(0.7, 20).Then(new Rate(0.85, 40)).Then(new Rate(0.9));

        used.Share.ShouldBe(0.7 * 0.85 * 0.9, 1e-12);
        used.Variance.ShouldBeGreaterThan(new Rate(0.7, 20).Variance * 0.85 * 0.85 * 0.9 * 0.9);
        new Rate(4.0 / 21).Then(new Rate(0.8)).Then(new Rate(0.88)).IsExact.ShouldBeTrue("rounding is no doubt");
    }

    [Fact]
    public void Half_of_either_sort_makes_the_mean_of_both_rates()
    {
        var mixed = new Rate(0.4, 50).MixedWith(new Rate(0.5, 50), 0.5);

        mixed.Share.ShouldBe(0.45, 1e-12);
        mixed.Variance.ShouldBe((new Rate(0.4, 50).Variance + new Rate(0.5, 50).Variance) / 4, 1e-15);
        new Rate(0.4, 50).MixedWith(new Rate(0.5, 50), 0).Variance.ShouldBe(new Rate(0.4, 50).Variance, 1e-15);
    }
}
