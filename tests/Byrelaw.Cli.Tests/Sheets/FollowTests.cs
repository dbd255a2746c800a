namespace Byrelaw.Cli.Tests.Sheets;

/// <summary>Stories after a transfer: 11 got E-01 on 20 October, seven days old, and 12 got E-03. What is no proof clears nobody.</summary>
public sealed class FollowTests : IDisposable
{
    private readonly TransferMorning _farm = new();

    public FollowTests() => Enter("2026-10-20,11,transfer,,,,E-01,", "2026-10-20,12,transfer,,,,E-03,");

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void Three_weeks_after_reads_as_approved()
    {
        Enter("2026-11-03,12,heat,,,,,", "2026-11-12,11,pregnancy test,pregnant,,,,ultrasound");
        var run = On("2026-11-12");
        run.Code.ShouldBe(ExitCode.Done, run.ToString());
        Snapshot.Verify(File.ReadAllText(_farm.Farm.At("out-follow/follow.md")), extension: "md");
        Snapshot.Verify(File.ReadAllText(_farm.Farm.At("out-follow/follow.ics")).ReplaceLineEndings("\n"), "calendar");
        File.ReadAllText(_farm.Farm.At("out-follow/follow.csv")).ShouldContain("12,E-03,2026-10-20,7,to check now,,2026-11-03,2026-10-30,2026-11-07,2026-11-10,2026-11-17,2026-12-01,");
    }

    [Fact]
    public void Whom_nobody_checked_is_overdue_and_counts_neither_as_empty_nor_as_in_calf()
    {
        On("2026-11-17").Out.ShouldContain("To check now");
        var overdue = On("2026-11-18").Out;
        overdue.ShouldContain("2 overdue.");
        overdue.ShouldContain("checked by nobody");
    }

    [Fact]
    public void An_empty_scan_by_hand_on_day_30_proves_nothing_and_the_list_says_the_same()
    {
        Enter("2026-11-12,11,pregnancy test,empty,,,,hand");
        var run = On("2026-11-20").Out;
        run.ShouldContain("11 was found empty 12 November, too early for how it was found: that proves nothing. Test again from 10 November (by hand from 1 December).");
        run.ShouldContain("2 overdue.");
        run.ShouldContain("May be in calf: 11, 12.");
        Enter("2026-12-01,11,pregnancy test,empty,,,,hand");
        On("2026-12-02").Out.ShouldContain("11 was found empty 1 December.");
    }

    [Fact]
    public void A_calf_that_was_found_and_is_gone_was_lost_between_two_days()
    {
        Enter("2026-11-12,11,pregnancy test,pregnant,,,,ultrasound", "2026-12-12,11,pregnancy test,empty,,,,ultrasound", "2026-11-12,12,pregnancy test,pregnant,,,,ultrasound", "2026-12-20,12,abortion,,,,,");
        var run = On("2026-12-21").Out;
        run.ShouldContain("11 lost it between 12 November and 12 December. Tell the vet.");
        run.ShouldContain("12 lost it between 12 November and 20 December. Tell the vet.");
    }

    [Fact]
    public void A_result_that_is_still_to_come_is_none_and_a_second_check_that_nobody_did_is_told()
    {
        Enter("2026-11-12,11,pregnancy test,pregnant,,,,ultrasound", "2026-11-12,12,pregnancy test,pending,,,,ultrasound");
        On("2026-11-18").Out.ShouldContain("1 overdue and 1 in calf by the latest test.");
        On("2026-12-20").Out.ShouldContain("Second check overdue: 11.");
    }

    [Fact]
    public void A_calf_twelve_days_early_is_told_with_its_day()
    {
        Enter("2026-11-12,11,pregnancy test,pregnant,,,,ultrasound", "2027-07-10,11,calving,,,,,");
        On("2027-07-11").Out.ShouldContain("11 calved 10 July, due 22 July; embryo E-01.");
    }

    private Run On(string day)
    {
        _farm.Farm.Clock.Now = DateTimeOffset.Parse($"{day}T08:00:00Z", CultureInfo.InvariantCulture);
        return _farm.Farm.Run("follow", "spring.byre", "--records-to", day);
    }

    /// <summary>Rows of the book, with the columns of an embryo and a method.</summary>
    private void Enter(params string[] rows)
    {
        var lines = File.ReadAllLines(_farm.Farm.At("records/events.csv"));
        if (!lines[0].EndsWith(",method", StringComparison.Ordinal))
        {
            lines = [.. lines.Select((line, at) => at == 0 ? line + ",embryo,method" : line + ",,")];
        }

        File.WriteAllText(_farm.Farm.At("records/events.csv"), string.Join('\n', lines.Concat(rows)) + "\n");
    }
}
