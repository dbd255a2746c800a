using System.Diagnostics;

namespace Byrelaw.Cli.Tests.OnDisk;

/// <summary>A pipe or a device where a file is expected: refused in a sentence, before anything waits for it or is written.</summary>
public sealed class NotFilesTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData("check", "IT")]
    [InlineData("tidy", "IT")]
    [InlineData("tidy", "--write", "IT")]
    [InlineData("draft", "IT")]
    [InlineData("why", "IT", "1007")]
    [InlineData("plan", "IT")]
    [InlineData("pack", "IT", "-o", "new.pack")]
    [InlineData("pack", "spring.byre", "-o", "new.pack", "--sign", "IT")]
    [InlineData("unpack", "IT", "there")]
    [InlineData("unpack", "old.pack", "there", "--signed-by", "IT")]
    [InlineData("verify", "IT")]
    [InlineData("verify", "out", "--rules", "IT")]
    [InlineData("verify", "out", "--programme", "IT")]
    [InlineData("compare", "IT", "spring.byre")]
    [InlineData("carry", "IT", "--to", "2027")]
    [InlineData("tune", "IT", "Body condition")]
    [InlineData("records", "records", "--rules", "IT")]
    public void In_place_of_a_file_that_is_read(params string[] args)
    {
        Prepare();
        foreach (var it in new[] { "pipe", "/dev/zero" })
        {
            var run = _farm.Run([.. args.Select(arg => arg == "IT" ? it : arg)]);
            run.ShouldBeOneClearLine($"{(it[0] == '/' ? it : _farm.At(it))} is a pipe or a device, not a file; save what it gives as a file, and name that");
            Directory.Exists(_farm.At("there")).ShouldBeFalse();
        }
    }

    [Theory]
    [InlineData("records/animals.csv")]
    [InlineData("records/events.csv")]
    [InlineData("recipients.byre")]
    [InlineData("out/recipients/my notes")]
    public void In_place_of_a_file_that_a_programme_needs_or_a_report_holds(string path)
    {
        Prepare();
        File.Delete(_farm.At(path));
        MakePipe(path);
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.CouldNot);
        run.Err.ShouldContain("is a pipe or a device, not a file");
        File.Exists(_farm.At("out/index.html")).ShouldBeTrue();
        _farm.Run("check", "vocabulary.byre").Code.ShouldBe(ExitCode.Done);
    }

    [Fact]
    public void In_place_of_the_log_it_is_told_and_the_work_goes_on()
    {
        Prepare();
        File.Delete(_farm.At("judging-log.jsonl"));
        MakePipe("judging-log.jsonl");
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Done);
        run.Err.ShouldContain("This is not in the log of judging, which cannot be kept here:");
        run.Err.ShouldContain("is a pipe or a device, not a file");
    }

    [Theory]
    [InlineData("pack", "spring.byre", "-o", "IT")]
    [InlineData("carry", "spring.byre", "--to", "2027", "-o", "IT")]
    [InlineData("key", "IT")]
    [InlineData("new", "IT")]
    [InlineData("draft", "spring.byre", "--out", "IT")]
    [InlineData("plan", "spring.byre", "--out", "IT")]
    [InlineData("unpack", "old.pack", "IT")]
    public void In_place_of_what_is_written(params string[] args)
    {
        Prepare();
        foreach (var it in new[] { "pipe", "/dev/null" })
        {
            _farm.Run([.. args.Select(arg => arg == "IT" ? it : arg)]).Code.ShouldBe(ExitCode.CouldNot);
        }
    }

    private void Prepare()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "pipes are made by mkfifo here");
        _farm.Run("draft", "spring.byre").Code.ShouldBe(ExitCode.Done);
        _farm.Run("pack", "spring.byre", "-o", "old.pack").Code.ShouldBe(ExitCode.Done);
        MakePipe("pipe");
    }

    private void MakePipe(string path)
    {
        using var made = Process.Start("mkfifo", [_farm.At(path)]);
        made.WaitForExit();
    }
}
