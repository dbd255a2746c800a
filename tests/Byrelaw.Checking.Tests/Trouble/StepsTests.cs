using System.Globalization;

namespace Byrelaw.Checking.Tests.Trouble;

/// <summary>What `check` takes grows as the rules do, or hardly more: its work is held to the size in steps, which no machine's speed moves.</summary>
public sealed class StepsTests
{
    // Twice as many and a little for keeping them in order; squared work would be four times as much.
    private const double MostOfTwice = 2.5;

    [Theory]
    [InlineData("all of", "no mastitis in the last {0} days")]
    [InlineData("all of", "at most {0} mastitis in the last {0} days")]
    [InlineData("all of", "no mastitis at least {0} days ago")]
    [InlineData("all of", "no mastitis from {0} days after last calving")]
    [InlineData("all of", "no mastitis in the last {0} days since last calving")]
    [InlineData("all of", "no mastitis between 5 and {0} days ago")]
    [InlineData("all of", "at least {0} days since last calving")]
    [InlineData("all of", "age at least {0} days")]
    [InlineData("all of", "dam is not \"{0}\"")]
    [InlineData("all of", "latest weight in the last {0} days at least {0} kg")]
    [InlineData("all of", "latest neospora in the last {0} days is negative")]
    [InlineData("any of", "no mastitis in the last {0} days")]
    public void A_list_twice_as_long_takes_twice_the_work(string list, string bullet) =>
        Sizes(size => $"rule \"A\"\nneeds {list}\n{Bullets(size, bullet)}because \"b\"\n");

    [Fact]
    public void A_list_that_contradicts_itself_takes_hardly_more() =>
        Sizes(size => $"rule \"A\"\nneeds all of\n{Bullets(size, "no mastitis in the last {0} days")}- at least 1 mastitis in the last 5 days\nbecause \"b\"\n");

    [Fact]
    public void Twice_as_many_rules_that_have_nothing_to_do_with_each_other_take_twice_the_work() =>
        Sizes(size => string.Concat(Enumerable.Range(0, size).Select(i => $"rule \"{i}\"\nneeds no e{i} in the last 30 days\nbecause \"b\"\n")),
            size => string.Concat(Enumerable.Range(0, size).Select(i => $"event e{i}\n")));

    private static string Bullets(int size, string bullet) =>
        string.Concat(Enumerable.Range(6, size).Select(i => $"- {string.Format(CultureInfo.InvariantCulture, bullet, i)}\n"));

    private static void Sizes(Func<int, string> rules, Func<int, string>? words = null)
    {
        var before = Steps(100, rules, words);
        foreach (var size in new[] { 200, 400, 800 })
        {
            var steps = Steps(size, rules, words);
            ((double)steps / before).ShouldBeLessThan(MostOfTwice, $"{before} steps for half of {size}, {steps} for all");
            before = steps;
        }
    }

    private static long Steps(int size, Func<int, string> rules, Func<int, string>? words)
    {
        var study = new Study(Written.Read((words?.Invoke(size) ?? "") + "rules for recipients\n" + rules(size)));
        TroubleFinder.Find(study);
        return study.Search.Steps;
    }
}
