namespace Byrelaw.Planning.Tests.Recipients;

public sealed class EnoughTests
{
    /// <summary>
    /// Sample sizes to see at least one with 95% (99%) certainty in a very large herd: Cannon and Roe 1982, Livestock Disease Surveys; from
    /// memory.
    /// </summary>
    [Theory]
    [InlineData(0.50, 0.95, 5)]
    [InlineData(0.20, 0.95, 14)]
    [InlineData(0.10, 0.95, 29)]
    [InlineData(0.05, 0.95, 59)]
    [InlineData(0.02, 0.95, 149)]
    [InlineData(0.01, 0.95, 299)]
    [InlineData(0.10, 0.99, 44)]
    [InlineData(0.05, 0.99, 90)]
    [InlineData(0.01, 0.99, 459)]
    public void At_least_one_takes_as_many_animals_as_the_tables_say(double share, double certainty, int animals) =>
        Enough.Of(1, certainty, new(share), 1000).Animals.ShouldBe(animals);

    /// <summary>
    /// Fewest trials for at least 1, 2 ... 6 successes at 5% each, with 95% certainty: Wilks 1941, Annals of Mathematical Statistics 12:91-96,
    /// as tabled in engineering ("59, 93, 124, 153, 181, 208"); from memory.
    /// </summary>
    [Theory]
    [InlineData(1, 59)]
    [InlineData(2, 93)]
    [InlineData(3, 124)]
    [InlineData(4, 153)]
    [InlineData(5, 181)]
    [InlineData(6, 208)]
    public void At_least_so_many_take_as_many_animals_as_the_tables_say(int accepted, int animals) =>
        Enough.Of(accepted, 0.95, new(0.05), 1000).Animals.ShouldBe(animals);

    [Fact]
    public void The_number_found_is_enough_and_one_fewer_is_not()
    {
        var rate = new Rate(0.8, 30);

        var enough = Enough.Of(24, 0.9, rate, 200);

        enough.Animals.ShouldNotBeNull();
        Counts.Of(enough.Animals.Value, rate).AtLeast(24).ShouldBe(enough.Reached, 1e-9);
        enough.Reached.ShouldBeGreaterThanOrEqualTo(0.9);
        Counts.Of(enough.Animals.Value - 1, rate).AtLeast(24).ShouldBeLessThan(0.9);
    }

    [Fact]
    public void Less_evidence_asks_for_more_animals()
    {
        var (opinion, count) = (Enough.Of(60, 0.9, new(0.8, 10), 300), Enough.Of(60, 0.9, new(0.8, 80), 300));

        opinion.Animals!.Value.ShouldBeGreaterThan(count.Animals!.Value);
        count.Animals.Value.ShouldBeGreaterThan(count.IfRateIsExact!.Value);
        opinion.IfRateIsExact.ShouldBe(count.IfRateIsExact);
    }

    [Fact]
    public void A_farm_with_too_few_animals_is_told_how_far_it_gets()
    {
        var enough = Enough.Of(24, 0.9, new(0.8, 30), 26);

        enough.Animals.ShouldBeNull();
        enough.Reached.ShouldBe(Counts.Of(26, new(0.8, 30)).AtLeast(24), 1e-9);
    }

    [Fact]
    public void Nobody_wanted_takes_nobody() => Enough.Of(0, 0.95, new(0.5), 10).Animals.ShouldBe(0);
}
