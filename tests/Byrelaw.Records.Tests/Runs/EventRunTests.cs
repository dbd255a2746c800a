namespace Byrelaw.Records.Tests.Runs;

public class EventRunTests
{
    [Fact]
    public void Entries_are_sorted_by_day_and_know_their_lines()
    {
        var herd = Read.Events("2026-03-01,1001,heat,,", "2026-01-01,1002,heat,,", "2026-02-01,1001,heat,,");

        Shown.Entries(herd, "1001", Words.Heat).ShouldBe("2026-02-01 (4), 2026-03-01 (2)");
        Shown.Entries(herd, "1002", Words.Heat).ShouldBe("2026-01-01 (3)");
        herd.Problems.ShouldBeEmpty();
    }

    [Fact]
    public void An_event_stands_once_a_day_with_its_first_line()
    {
        var herd = Read.Events("2026-03-01,1001,heat,,", "2026-03-01,1001,bulling,,", "2026-03-02,1001,heat,,");

        Shown.Entries(herd, "1001", Words.Heat).ShouldBe("2026-03-01 (2), 2026-03-02 (4)");
    }

    [Fact]
    public void Measures_and_tests_keep_every_result_of_a_day()
    {
        var herd = Read.Events(
            "2026-03-01,1001,weight,500,kg", "2026-03-01,1001,weight,510,kg",
            "2026-03-01,1001,BVD virus,negative,", "2026-03-01,1001,BVD virus,positive,");

        Shown.Entries(herd, "1001", Words.Weight).ShouldBe("2026-03-01 (2), 2026-03-01 (3)");
        herd.Runs[Words.Weight.Id].Low.ShouldBe([500, 510]);
        herd.Runs[Words.Virus.Id].Answers.ShouldBe([1, 0]);
    }

    [Fact]
    public void A_kind_is_found_by_any_of_its_names_in_any_case()
    {
        var herd = Read.Events("2026-03-01,1001,Calved,,", "2025-03-01,1001,CALVING,,");

        Shown.Entries(herd, "1001", Words.Calving).ShouldBe("2025-03-01 (3), 2026-03-01 (2)");
    }

    [Fact]
    public void A_kind_that_is_left_out_says_nothing_and_suspends_nothing()
    {
        var herd = Read.Herd(Read.Heading("2026-03-01,1001,Foot Trim,,", "2026-02-01,1001,heat,,"), keeping: Words.Keeping(leaveOut: ["foot trim"]));

        herd.Problems.ShouldBeEmpty();
        herd.Coverage.Gaps.ShouldBeEmpty();
    }
}
