namespace Byrelaw.Reporting.Tests.Log;

/// <summary>Lines come into the log whole, one after the other, whatever happens around it.</summary>
public sealed class AppendingTests : IDisposable
{
    private readonly SomeLog _log = new(3);

    public void Dispose() => _log.Dispose();

    [Fact]
    public void Runs_at_the_same_time_each_add_a_whole_line()
    {
        const int Runs = 8, Each = 5;
        Parallel.For(0, Runs, new ParallelOptions { MaxDegreeOfParallelism = Runs }, _ =>
        {
            for (var i = 0; i < Each; i++)
            {
                _log.Append();
            }
        });

        var check = LogCheck.Of(_log.Bytes, "log");
        check.Problems.ShouldBeEmpty();
        check.Entries.Length.ShouldBe(3 + (Runs * Each));
    }

    [Fact]
    public void What_a_crash_left_of_a_line_stays_and_the_log_goes_on_below_it()
    {
        var whole = _log.Bytes;
        var start = Array.LastIndexOf(whole, (byte)'\n', whole.Length - 2) + 1;
        for (var left = whole.Length - 1; left > start; left -= 23)
        {
            File.WriteAllBytes(_log.File, whole[..left]);
            // Where only the line end is missing the line itself is whole.
            var isWhole = left == whole.Length - 1;
            SomeLog.Codes(_log.Bytes).ShouldBe(isWhole ? [] : ["L0104"]);

            var added = _log.Append();
            added.AfterHalf.ShouldBe(!isWhole);
            added.IsBroken.ShouldBeFalse();
            added.Number.ShouldBe(isWhole ? 4 : 3);
            SomeLog.Codes(_log.Bytes).ShouldBe(isWhole ? [] : ["L0104"]);
            _log.Bytes.AsSpan(0, left).SequenceEqual(whole.AsSpan(0, left)).ShouldBeTrue();
        }
    }

    [Fact]
    public void A_first_line_of_which_a_crash_left_half_does_not_stop_the_log()
    {
        File.WriteAllText(_log.File, "{\"numb");
        _log.Append().Number.ShouldBe(1);
        SomeLog.Codes(_log.Bytes).ShouldBe(["L0104"]);
    }

    [Fact]
    public void A_broken_log_goes_on_and_says_that_it_is_broken()
    {
        File.WriteAllBytes(_log.File, SomeLog.Join(_log.Lines.Where((_, place) => place != 1)));
        var added = _log.Append();
        added.IsBroken.ShouldBeTrue();
        added.Number.ShouldBe(4);
        SomeLog.Codes(_log.Bytes).ShouldBe(["L0102"]);
    }

    [Fact]
    public void A_file_that_is_no_log_is_left_as_it_is()
    {
        File.WriteAllText(_log.File, "shopping: drench, twine\n");
        Should.Throw<IOException>(() => _log.Append()).Message.ShouldContain("holds no line of a log");
        File.ReadAllText(_log.File).ShouldBe("shopping: drench, twine\n");
    }

    [Fact]
    public void Nobody_is_named_whom_nobody_named()
    {
        _log.Append();
        _log.Append("A. Vet");
        _log.Lines[^2].ShouldContain("\"by\":null");
        _log.Lines[^1].ShouldContain("\"by\":\"A. Vet\"");
        _log.Lines.ShouldAllBe(line => !line.Contains(Environment.UserName + "\"", StringComparison.Ordinal) && !line.Contains(_log.Folder, StringComparison.Ordinal));
    }
}
