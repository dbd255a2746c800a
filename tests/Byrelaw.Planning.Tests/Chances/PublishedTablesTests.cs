using System.Numerics;

namespace Byrelaw.Planning.Tests.Chances;

/// <summary>Counts held against printed tables, and against fractions of whole numbers.</summary>
public sealed class PublishedTablesTests
{
    /// <summary>Cumulative binomial tables as most textbooks print them, four places; from memory.</summary>
    [Theory]
    [InlineData(10, 0.5, 3, 0.1719)]
    [InlineData(15, 0.2, 2, 0.3980)]
    [InlineData(20, 0.3, 4, 0.2375)]
    [InlineData(20, 0.05, 0, 0.3585)]
    [InlineData(25, 0.4, 8, 0.2735)]
    public void Binomial_chances_are_those_of_the_tables(int animals, double share, int atMost, double printed) =>
        (1 - Counts.Of(animals, new(share)).AtLeast(atMost + 1)).ShouldBe(printed, 0.00005);

    [Fact]
    public void Beta_binomial_chances_are_those_of_exact_fractions()
    {
        // "36 of 80" and 24 more animals. In whole numbers: C(24, k) times 36·37·…(k factors) times 44·45·…(24 - k factors), over
        // 80·81·…(24 factors).
        var counts = Counts.Of(24, Rate.From(36, 80));
        for (var k = 0; k <= 24; k++)
        {
            var part = Choose(24, k) * Rising(36, k) * Rising(44, 24 - k);
            counts.Exact(k).ShouldBe((double)(part * BigInteger.Pow(10, 30) / Rising(80, 24)) / 1e30, 1e-13);
        }
    }

    private static BigInteger Choose(int n, int k) => Rising(n - k + 1, k) / Rising(1, k);

    private static BigInteger Rising(int from, int factors) =>
        Enumerable.Range(from, factors).Aggregate(BigInteger.One, (product, factor) => product * factor);
}
