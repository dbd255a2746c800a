using Byrelaw.Checking.Comparing;
using Byrelaw.Workshop.Comparing;

namespace Byrelaw.Checking.Tests.Comparing;

public sealed class BoundaryAnimalsTests
{
    private const string Words = "event calving\nevent mastitis\nmeasure score on scale 1 to 10\nmeasure copper in umol/L\nrules for recipients\n";

    [Fact]
    public void A_longer_wait_is_shown_by_the_first_and_the_last_day_that_feel_it() => Shown(
        "rule \"Calved\"\n  needs at least 56 days since last calving\n  because \"a\"\n", "rule \"Calved\"\n  needs at least 63 days since last calving\n  because \"a\"\n")
        .ShouldBe(["calving 62: True > False", "calving 56: True > False"]);

    [Fact]
    public void A_wider_range_is_shown_by_the_values_it_lets_in() => Shown(
        "rule \"Score\"\n  needs latest score in the last 45 days between 4.0 and 5.5\n  because \"a\"\n", "rule \"Score\"\n  needs latest score in the last 45 days between 3.5 and 5.5\n  because \"a\"\n")
        .ShouldContain("score 3.5 45: False > True");

    [Fact]
    public void A_new_rule_is_shown_by_an_animal_it_keeps_out() => Shown(
        "rule \"Calved\"\n  needs at least 56 days since last calving\n  because \"a\"\n",
        "rule \"Calved\"\n  needs at least 56 days since last calving\n  because \"a\"\nrule \"Udder\"\n  needs no mastitis in the last 30 days\n  because \"a\"\n")
        .ShouldBe(["mastitis 30: True > False", "mastitis 0: True > False"]);

    [Fact]
    public void A_rule_about_the_mob_is_left_out() => Shown(
        "rule \"Copper\"\n  needs average copper of her mob in the last 90 days, from at least 5 animals, at least 7 umol/L\n  because \"a\"\n",
        "rule \"Copper\"\n  needs average copper of her mob in the last 90 days, from at least 5 animals, at least 8 umol/L\n  because \"a\"\n")
        .ShouldBeEmpty();

    [Fact]
    public void Rulebooks_that_say_the_same_show_nobody() => Shown(
        "rule \"Calved\"\n  needs at least 56 days since last calving\n  because \"a\"\n", "rule \"Calved\"\n  needs at least 56 days since last calving\n  because \"b\"\n").ShouldBeEmpty();

    private static List<string> Shown(string old, string @new) =>
        [.. BoundaryAnimals.Of(RulebookComparison.Of(Read(old), Read(@new))).Select(animal =>
            string.Join(", ", animal.Rows.Select(row => $"{row.Kind} {(row.Value.Length > 0 ? row.Value + " " : "")}{Period.DaysBetween(row.Date, animal.Day)}")) + $": {animal.Old} > {animal.New}")];

    private static Rulebook Read(string text)
    {
        var reading = RulebookReader.Read("a.byre", new OneFile(Words + text))!;
        reading.HasErrors.ShouldBeFalse();
        return reading.Rulebook;
    }

    private sealed class OneFile(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "a.byre" ? Encoding.UTF8.GetBytes(text) : null;
    }
}
