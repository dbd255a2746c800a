using MathNet.Numerics.Distributions;

namespace Byrelaw.Planning.Tests.Chances;

public sealed class CountsTests
{
    private const double Close = 1e-11;

    // A mean takes the dropped tail, a million-millionth of the chances, times a count.
    private const double CloseMean = 1e-9;

    [Theory]
    [InlineData(1, 0.3)]
    [InlineData(40, 0.45)]
    [InlineData(250, 0.97)]
    public void Animals_with_an_exact_rate_are_binomial(int animals, double share) =>
        Agrees(Counts.Of(animals, new(share)), k => Binomial.PMF(share, animals, k), animals);

    [Theory]
    [InlineData(1, 0.3, 5)]
    [InlineData(40, 0.45, 80)]
    [InlineData(250, 0.97, 2.5)]
    public void Animals_with_an_uncertain_rate_are_beta_binomial(int animals, double share, double weight) =>
        Agrees(Counts.Of(animals, new(share, weight)), k => BetaBinomial.PMF(animals, share * weight, (1 - share) * weight, k), animals);

    [Theory]
    [InlineData(9, 6)]
    [InlineData(90, 19)]
    [InlineData(0.4, 1.5)]
    public void Counts_that_vary_more_than_by_chance_are_negative_binomial(double mean, double spread)
    {
        var (variance, counts) = (spread * spread, Counts.Around(mean, spread * spread));

        Agrees(counts, k => NegativeBinomial.PMF(mean * mean / (variance - mean), mean / variance, k), counts.Most);
        counts.Mean.ShouldBe(mean, CloseMean);
        counts.Spread.ShouldBe(spread, 1e-6);
    }

    [Fact]
    public void Counts_whose_variance_is_their_mean_are_Poisson() =>
        Agrees(Counts.Around(12.5, 12.5), k => Poisson.PMF(12.5, k), 60);

    [Fact]
    public void Counts_that_vary_less_than_by_chance_are_binomial() =>
        Agrees(Counts.Around(20 * 0.8, 20 * 0.8 * 0.2), k => Binomial.PMF(0.8, 20, k), 20);

    [Theory]
    [InlineData(0.614, 0.2076)]
    [InlineData(1.228, 0.5)]
    [InlineData(2.5, 0)]
    [InlineData(3, 0)]
    [InlineData(3, 0.4)]
    [InlineData(9, 2)]
    [InlineData(9, 2.99)]
    [InlineData(60, 6)]
    public void However_little_counts_vary_their_mean_is_right_and_their_spread_as_far_as_whole_numbers_allow(double mean, double spread)
    {
        var counts = Counts.Around(mean, spread * spread);

        counts.Mean.ShouldBe(mean, 1e-6);
        counts.Spread.ShouldBe(Math.Max(spread, Math.Sqrt((mean - Math.Floor(mean)) * (1 - mean + Math.Floor(mean)))), 1e-5);
    }

    [Fact]
    public void Negative_binomial_counts_that_lose_a_share_stay_so()
    {
        // With mean m and variance v, a share q of them has the mean qm and the variance q²v + q(1 - q)m.
        var thinned = Counts.Around(9, 36).ThinnedBy(new(0.22));

        var closed = Counts.Around(9 * 0.22, (0.22 * 0.22 * 36) + (0.22 * 0.78 * 9));
        Agrees(thinned, closed.Exact, thinned.Most);
    }

    [Fact]
    public void The_smaller_of_two_and_what_is_beyond_add_up_to_the_whole()
    {
        var (embryos, recipients) = (Counts.Around(8, 20), Counts.Of(12, new(0.8, 30)));

        (embryos.OrFewer(recipients).Mean + embryos.Beyond(recipients).Mean).ShouldBe(embryos.Mean, CloseMean);
        (embryos.OrFewer(recipients).Mean + recipients.Beyond(embryos).Mean).ShouldBe(recipients.Mean, CloseMean);
        (1 - embryos.Beyond(recipients).Chance).ShouldBe(Enumerable.Range(0, 13).Sum(count => recipients.Exact(count) * (1 - embryos.AtLeast(count + 1))), Close);
        embryos.OrFewer(recipients).AtLeast(5).ShouldBe(embryos.AtLeast(5) * recipients.AtLeast(5), Close);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(12)]
    [InlineData(60)]
    public void Embryos_beyond_all_places_change_no_transfer(int places)
    {
        var (embryos, recipients) = (Counts.Around(8, 20), Counts.Of(places, new(0.8, 30)));

        Agrees(embryos.OrAtMost(places).OrFewer(recipients), embryos.OrFewer(recipients).Exact, places);
        embryos.OrAtMost(places).AtLeast(places).ShouldBe(embryos.AtLeast(places), Close);
    }

    [Theory]
    [InlineData(3, 5)]
    [InlineData(30, 47)]
    public void Sums_are_those_of_every_pair(int one, int other)
    {
        var (these, those) = (Counts.Of(one, new(0.4, 12)), Counts.Around(other, 3 * other));

        Agrees(these.Plus(those), count => Enumerable.Range(0, count + 1).Sum(i => these.Exact(i) * those.Exact(count - i)), one + other);
    }

    [Fact]
    public void Several_times_over_is_one_after_the_other()
    {
        var once = Counts.Around(3, 7);

        var thrice = once.Plus(once).Plus(once);
        Agrees(once.Times(3), thrice.Exact, thrice.Most);
        once.Times(0).Exact(0).ShouldBe(1);
    }

    [Fact]
    public void A_count_is_found_by_its_chance()
    {
        var counts = new Counts([0.1, 0.2, 0.4, 0.2, 0.1]);

        counts.Quantile(0.05).ShouldBe(0);
        counts.Quantile(0.5).ShouldBe(2);
        counts.Quantile(1).ShouldBe(4);
        counts.CountedOn(0.8).ShouldBe(1);
        counts.CountedOn(0.95).ShouldBe(0);
        counts.AtLeast(3).ShouldBe(0.3, Close);
        counts.AtLeast(-1).ShouldBe(1, Close);
        counts.AtLeast(5).ShouldBe(0);
    }

    private static void Agrees(Counts counts, Func<int, double> expected, int most)
    {
        for (var count = 0; count <= most; count++)
        {
            counts.Exact(count).ShouldBe(expected(count), Close, $"chance of {count}");
        }
    }
}
