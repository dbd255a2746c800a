namespace Byrelaw.Judging.Tests.Promises;

/// <summary>"Other words that no rule reads stand among the doubts": shown, and nothing comes of it.</summary>
public sealed class WordsOnRecordTests
{
    private const string Own = """
        event tail painted
        event belled
        event rugged
        measure rump fat  on scale 1 to 5
        event gone to show  leaves the herd
        rules for recipients
        rule "Not just belled"
          needs no belled in the last 5 days
          because "She is nervous."
          source "example"

        """;

    [Fact]
    public void A_farms_own_word_that_stands_on_record_and_that_no_rule_reads_is_shown_and_takes_no_promise_away()
    {
        var farm = Farm("2026-07-01,1,tail painted,", "2026-08-01,1,tail painted,", "2026-07-01,1,belled,", "2026-07-01,1,rump fat,3", "2026-09-01,1,gone to show,", "2026-06-01,1,calving,");
        farm.Believe().Doubted.OfType<NotReadByRules>().Single().Kinds.Select(one => (one.Kind.Name, one.Entries)).ShouldBe([("tail painted", 2), ("rump fat", 1)]);
        farm.Fallen().ShouldBe("");
    }

    [Fact]
    public void Where_every_word_on_record_is_read_nothing_is_shown() =>
        Farm("2026-07-01,1,belled,", "2026-06-01,1,calving,").Believe().Doubted.OfType<NotReadByRules>().ShouldBeEmpty();

    [Fact]
    public void A_word_that_is_left_out_and_stands_on_record_is_shown_too() =>
        new PromisingFarm { Animals = ["1,2023-05-01,F"], Events = ["2026-07-01,1,belegt,", "2026-08-01,1,Belegt,", "2026-06-01,1,calving,"], Records = "up to 2026-10-04\ncomplete for heat since 2020-01-01\nleave out belegt, bell changed" }
            .Believe().Doubted.OfType<NotReadByRules>().Single().LeftOut.ShouldBe([new WordLeftOut("belegt", 2)]);

    private static PromisingFarm Farm(params string[] events) => new() { Own = Own, Animals = ["1,2023-05-01,F"], Events = events, Records = "up to 2026-10-04\ncomplete for heat since 2020-01-01" };
}
