namespace Byrelaw.Planning.Tests.Chances;

public sealed class StandInsTests
{
    [Theory]
    [InlineData(0.45, 80)]
    [InlineData(0.22, 2)]
    [InlineData(0.9, 1)]
    public void Stand_ins_for_a_rate_have_the_moments_of_a_beta_distribution(double share, double weight)
    {
        var cases = StandIns.ForRate(new(share, weight), 6);

        var moment = 1.0;
        for (var power = 0; power < 12; power++)
        {
            cases.Sum(@case => @case.Weight * Math.Pow(@case.Value, power)).ShouldBe(moment, 1e-10);
            moment *= ((share * weight) + power) / (weight + power);
        }
    }

    [Fact]
    public void Stand_ins_for_a_mean_have_the_moments_of_a_gamma_distribution()
    {
        var (mean, variance) = (9.0, 4.0);
        var cases = StandIns.ForGamma(mean, variance, 5);

        var moment = 1.0;
        for (var power = 0; power < 10; power++)
        {
            cases.Sum(@case => @case.Weight * Math.Pow(@case.Value / mean, power)).ShouldBe(moment, 1e-8);
            moment *= 1 + (power * variance / (mean * mean));
        }
    }

    [Fact]
    public void An_exact_rate_stands_for_itself() => StandIns.ForRate(new(0.3), 6).ShouldBe([(1, 0.3)]);
}
