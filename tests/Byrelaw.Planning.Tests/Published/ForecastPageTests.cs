using System.Globalization;
using System.Text;
using Byrelaw.Testing.Documents;

namespace Byrelaw.Planning.Tests.Published;

/// <summary>The tables of docs/forecast.md are what the program works out.</summary>
public sealed class ForecastPageTests
{
    [Fact]
    public void The_tables_of_the_page_are_what_the_program_works_out()
    {
        var tables = 0;

        ExecutedPage.Verify("docs/forecast.md", fence =>
        {
            if (fence.Language != "published")
            {
                return null;
            }

            tables++;
            return fence.Rest == "means" ? Means() : Others();
        });

        tables.ShouldBe(2);
    }

    [Fact]
    public void Published_means_are_reproduced()
    {
        foreach (var row in OwnRates.All())
        {
            row.Forecast.Mean.ShouldBe(row.Published, 0.001 * row.Published, row.What);
        }
    }

    [Fact]
    public void Most_published_seasons_lie_in_the_range_that_other_sources_give()
    {
        // Four in five would, were those rates drawn from the same farms. The page says which do not.
        OtherSources.All().Count(IsInside).ShouldBeGreaterThanOrEqualTo(5);
    }

    private static string Means()
    {
        var table = new StringBuilder();
        foreach (var row in OwnRates.All())
        {
            table.Append(CultureInfo.InvariantCulture, $"{row.What,-64} {row.Published,6:0.0} published {row.Forecast.Mean,7:0.0} forecast\n");
        }

        return table.ToString();
    }

    private static string Others()
    {
        var table = new StringBuilder();
        foreach (var row in OtherSources.All())
        {
            table.Append(CultureInfo.InvariantCulture,
                $"{row.What,-64} {row.Forecast.Mean,5:0.0} forecast ({row.Forecast.Quantile(0.1)} to {row.Forecast.Quantile(0.9)}), {row.Published,5:0.0} published, {(IsInside(row) ? "inside" : "OUTSIDE")}, off by {100 * ((row.Forecast.Mean / row.Published) - 1):+0;-0}%\n");
        }

        return table.ToString();
    }

    private static bool IsInside(PublishedSeason row) => row.Published >= row.Forecast.Quantile(0.1) && row.Published <= row.Forecast.Quantile(0.9);
}

/// <summary>A published figure, scaled to a season, beside a forecast of it.</summary>
internal sealed record PublishedSeason(string What, double Published, Counts Forecast);
