namespace Byrelaw.Records.Tests.Sources;

/// <summary>A list of animals says who is gone, when and why: one whose day nobody wrote down is gone by the day of which the list is true, and in doubt before.</summary>
public sealed class WhyGoneTests
{
    private const string Farm = """
        event calving
        event sale  leaves the herd
        event death  leaves the herd
        test pregnancy test  answers pregnant, empty

        records
          up to 2026-09-30
          complete for calving since 2026-01-01
          from "cows.csv", a row for each animal, as at 2026-09-25
            animal in "No"
            kind in "Why gone", dated in "Gone on"
              - "verendet" is death
              - "verkauft" is sale
              - "blieb" is left out
              - "leer" is pregnancy test, empty
              - "unklar" is pregnancy test, pending
          from "diary.csv", a row for each event
            date in "Day"
            animal in "No"
            kind is calving
        """;

    [Theory]
    [InlineData(",", "In", "In", "In")]
    [InlineData("verkauft,2026-06-01", "In", "Out", "Out")]
    [InlineData("sale,2026-06-01", "In", "Out", "Out")]
    [InlineData("verendet,", "NotKnown", "NotKnown", "Out")]
    [InlineData("verendet,soon", "NotKnown", "NotKnown", "NotKnown")]
    [InlineData("blieb,2026-06-01", "In", "In", "In")]
    [InlineData(",2026-06-01", "In", "NotKnown", "NotKnown")]
    [InlineData("geklaut,2026-06-01", "In", "NotKnown", "NotKnown")]
    [InlineData("geklaut,", "NotKnown", "NotKnown", "NotKnown")]
    [InlineData("leer,2026-06-01", "In", "In", "In")]
    public void She_is_here_until_she_is_gone(string said, string before, string after, string atTheEnd)
    {
        var herd = Herd(said);
        Presence[] found = [On(herd, "2026-05-31"), On(herd, "2026-06-01"), On(herd, "2026-09-25")];
        found.Select(presence => presence.ToString()).ShouldBe([before, after, atTheEnd]);
    }

    [Fact]
    public void An_answer_may_stand_there_too() => Herd("leer,2026-06-01").Runs[Herd("").Vocabulary.FindKind("pregnancy test")!.Id].Days.ShouldBe([Day.Number(Words.Date("2026-06-01"))]);

    [Fact]
    public void A_result_that_is_not_in_is_pending()
    {
        var run = Herd("unklar,2026-06-01").Runs[Herd("").Vocabulary.FindKind("pregnancy test")!.Id];
        run.Answers.ShouldBe([KindRun.NotKnown]);
    }

    [Theory]
    [InlineData("kind in \"Why gone\"", "B0865")]
    [InlineData("kind is death", "B0869")]
    [InlineData("kind in \"Why gone\", dated in \"Gone on\"\n      - \"gone\" is dead", "B0204")]
    public void A_line_that_cannot_be_read_is_told(string line, string code) =>
        FarmFiles.Rules(Farm.Replace("kind in \"Why gone\", dated in \"Gone on\"", line, StringComparison.Ordinal)).Problems.Select(problem => problem.Code).ShouldContain(code);

    private static Presence On(Herd herd, string day) => herd.Membership.At(herd.Find("1"), Day.Number(Words.Date(day)));

    private static Herd Herd(string said) => FarmFiles.Herd(Farm, ("cows.csv", $"No,Why gone,Gone on\n1,{said}\n2,,\n"), ("diary.csv", "Day,No\n2026-03-01,1\n2026-03-02,2\n"));
}
