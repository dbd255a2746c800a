namespace Byrelaw.Judging.Tests.Promises;

/// <summary>A line of a source that reads a word as something else than it may be takes the promise of that kind away; what is read as a service by a bull hides no bull, for one must have been there.</summary>
public sealed class OverlookedBulletTests
{
    [Theory]
    [InlineData("- \"Natural\" is mating", "bull in")]
    [InlineData("- \"Natural\" is left out", "bull in")]
    [InlineData("- \"Natural\" is heat", "bull in")]
    [InlineData("- \"Natural\" is mating, method is inseminated", "bull in")]
    [InlineData("- \"Natural\" is mating, method is natural", "")]
    [InlineData("- \"Natural\" is \"bull in\"", "")]
    [InlineData("- \"AI\" is heat", "mating")]
    [InlineData("- \"AI\" is mating, method is natural", "")]
    [InlineData("- \"S\" is mating\n    - \"S\" where \"Remark\" is \"x\" is left out", "mating")]
    [InlineData("- \"S\" is mating\n    - \"S\" where \"Remark\" is \"x\" is heat", "mating")]
    [InlineData("- \"S\" is heat\n    - \"S\" where \"Remark\" is \"x\" is left out", "")]
    [InlineData("- \"S\" where \"Remark\" is \"x\" is mating\n    - \"S\" is heat", "mating")]
    [InlineData("- \"S\" where \"Remark\" is \"x\" is mating\n    - \"S\" is left out", "mating")]
    [InlineData("- \"Natural\" is mating, method is natural\n    - \"Natural\" where \"Remark\" is \"x\" is mating", "bull in")]
    public void A_word_is_overlooked(string bullet, string fallen)
    {
        var herd = Farm(bullet).Believe();
        string.Join(", ", herd.Doubted.OfType<MayBeOverlooked>().Select(doubt => doubt.Fallen.Name)).ShouldBe(fallen);
        herd.Doubted.OfType<MayBeOverlooked>().ShouldAllBe(doubt => doubt.In == OverlookedIn.Bullet);
    }

    [Fact]
    public void What_a_person_says_that_it_is_not_counts() =>
        Farm("- \"Natural\" is mating", "\nleave out Natural, which is not bull in").Believe().Doubted.OfType<MayBeOverlooked>().ShouldBeEmpty();

    [Theory]
    [InlineData("P", "pregnancy test")]
    [InlineData("E", "")]
    [InlineData("void", "")]
    public void Rows_are_left_out_that_a_text_reads_as_a_calf(string cell, string fallen)
    {
        var herd = Farm("- \"PD\" where \"Detail\" is \"P\" is pregnancy test, pregnant\n    - \"PD\" where \"Detail\" is \"E\" is pregnancy test, empty", $"\ncomplete for pregnancy test since 2026-01-01", $"\n  leave out rows where \"Detail\" is \"{cell}\"").Believe();
        string.Join(", ", herd.Doubted.OfType<MayBeOverlooked>().Select(doubt => doubt.Fallen.Name)).ShouldBe(fallen);
    }

    [Fact]
    public void Another_file_has_another_sender_s_codes() =>
        Farm("- \"S\" is mating", "", "\nfrom \"other.csv\", a row for each event\n  date in \"Day\"\n  animal in \"No\"\n  kind in \"Code\"\n    - \"S\" is heat")
            .Believe().Doubted.OfType<MayBeOverlooked>().ShouldBeEmpty();

    private static PromisingFarm Farm(string bullet, string more = "", string below = "") => new()
    {
        Animals = ["1,2018-01-01,F"],
        Events = ["2026-06-01,1,heat,"],
        Records = $"up to 2026-10-04\ncomplete for mating, bull in, bull out since 2026-01-01{more}\nfrom \"diary.csv\", a row for each event\n  date in \"Day\"\n  animal in \"No\"\n  kind in \"Code\"\n    {bullet}{below}",
    };
}
