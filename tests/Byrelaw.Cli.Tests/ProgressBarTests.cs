using Byrelaw.Reporting.Terminal;

namespace Byrelaw.Cli.Tests;

public sealed class ProgressBarTests
{
    [Fact]
    public void Nothing_is_shown_where_nobody_watches()
    {
        using var err = new StringWriter();
        using (var bar = new ProgressBar(Doors.Plain(TextWriter.Null, err, "/"), "Judging", quietFor: TimeSpan.Zero))
        {
            bar.Report((1, 2));
        }

        err.ToString().ShouldBeEmpty();
    }

    [Fact]
    public void On_a_terminal_it_says_how_far_it_is_and_wipes_itself_away()
    {
        using var err = new StringWriter();
        using (var bar = new ProgressBar(new Doors(TextWriter.Null, err, "/", Ink.Plain, Ink.Plain, ShowsProgress: true), "Judging", quietFor: TimeSpan.Zero))
        {
            bar.Report((1, 2));
        }

        err.ToString().ShouldStartWith("\rJudging ###############............... 1 of 2");
        err.ToString().Split('\r')[^2].ShouldMatch("^ +$");
        err.ToString().ShouldEndWith("\r");
    }
}
