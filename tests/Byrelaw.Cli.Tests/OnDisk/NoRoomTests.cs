namespace Byrelaw.Cli.Tests.OnDisk;

/// <summary>A disk that is full, and a folder in which nothing may be written: one clear line, and everything as it was.</summary>
public sealed class NoRoomTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    // A file that may not grow past some kB fails at its write like one on a full disk (man 2 setrlimit, RLIMIT_FSIZE; the signal is ignored).
    [Theory]
    [InlineData("draft", "spring.byre")]
    [InlineData("plan", "spring.byre")]
    [InlineData("tidy", "--write", "untidy.byre")]
    [InlineData("pack", "large.byre", "-o", "new.pack")]
    [InlineData("unpack", "large.pack", "there", "--replace")]
    [InlineData("carry", "large.byre", "--to", "2027")]
    [InlineData("record", "spring.byre", "vet.csv")]
    public void On_a_full_disk_nothing_is_half_written(params string[] args)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "how far files may grow is set by bash here");
        var remarks = string.Concat(Enumerable.Range(1, 700).Select(i => $"# remark {i}\n"));
        _farm.Write("untidy.byre", "event    heat\n" + remarks);
        _farm.Write("large.byre", TemporaryFarm.Programme + remarks);
        _farm.Append("records/events.csv", string.Concat(Enumerable.Repeat("2026-08-01,1423,body condition,5.0,,,\n", 300)));
        _farm.Write("vet.csv", "animal,date,pregnancy test,pregnancy test: method\n1007,2026-09-18,empty,ultrasound\n");
        _farm.Run("pack", "large.byre", "-o", "large.pack").Code.ShouldBe(ExitCode.Done);
        _farm.Run("unpack", "large.pack", "there").Code.ShouldBe(ExitCode.Done);
        _farm.Write("there/large.byre", TemporaryFarm.Programme + "# mine\n");
        _farm.Run("draft", "spring.byre").Code.ShouldBe(ExitCode.Done);
        _farm.Run("plan", "spring.byre").Code.ShouldBe(ExitCode.Done);
        var before = Look();

        var run = RealProgram.End(RealProgram.StartAfter("trap '' XFSZ; ulimit -f 6", _farm.Folder, args));
        run.Code.ShouldBe(ExitCode.CouldNot, run.ToString());
        run.Err.ShouldContain("byrelaw: ");
        run.Err.ShouldNotContain("   at ");
        Look().ShouldBe(before);
    }

    // On Linux nobody, not even the owner of the machine, makes a folder there (man 5 proc).
    [Theory]
    [InlineData("draft", "spring.byre", "--out", "/proc/out")]
    [InlineData("plan", "spring.byre", "--out", "/proc/out")]
    [InlineData("new", "/proc/farm")]
    [InlineData("pack", "spring.byre", "-o", "/proc/new.pack")]
    [InlineData("carry", "spring.byre", "--to", "2027", "-o", "/proc/next.byre")]
    [InlineData("key", "/proc/adviser.key")]
    [InlineData("unpack", "old.pack", "/proc/there")]
    [InlineData("tidy", "--write", "/proc/version")]
    public void Where_nothing_may_be_written_that_is_said(params string[] args)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "other systems have no such folder");
        _farm.Run("pack", "spring.byre", "-o", "old.pack").Code.ShouldBe(ExitCode.Done);
        var run = _farm.Run(args);
        run.Code.ShouldNotBe(ExitCode.Done);
        run.Err.ShouldNotContain("went wrong inside");
    }

    [Fact]
    public void Two_runs_at_once_each_end_and_the_report_is_whole()
    {
        var runs = Enumerable.Range(0, 4).Select(_ => RealProgram.Start(_farm.Folder, "draft", "spring.byre")).ToList();
        foreach (var run in runs.Select(RealProgram.End))
        {
            run.Code.ShouldBe(ExitCode.Done, run.ToString());
        }

        _farm.Run("verify", "out").Code.ShouldBe(ExitCode.Done);
        Directory.EnumerateFileSystemEntries(_farm.Folder, ".*").ShouldBeEmpty();
        JudgingLines().ShouldBe(4);
    }

    private int JudgingLines() => File.ReadAllLines(_farm.At("judging-log.jsonl")).Length;

    private Dictionary<string, string> Look() => Directory.EnumerateFiles(_farm.Folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
        .Where(path => !path.EndsWith("judging-log.jsonl", StringComparison.Ordinal)).ToDictionary(path => path, File.ReadAllText);
}
