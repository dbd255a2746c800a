using System.Text;

namespace Byrelaw.Cli.Tests;

public sealed class TidyTests : IDisposable
{
    private const string Untidy = "use   \"recipients.byre\"\r\n\r\n# ours\r\nchange \"Body condition\"\r\n  because \"x\"\r\n  source \"y\"\r\nagreed by \"vet\" on 2026-06-14\r\n";
    private const string Tidy = "use \"recipients.byre\"\n\n# ours\nchange \"Body condition\"\n  because \"x\"\n  source  \"y\"\n  agreed by \"vet\" on 2026-06-14\n";

    private readonly TemporaryFarm _farm = new();

    public TidyTests() => _farm.Write("ours.byre", Untidy.ReplaceLineEndings("\n"));

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_file_is_tidied_once_and_then_is_tidy_already()
    {
        _farm.Run("tidy", "--write", "ours.byre").ToString().ShouldBe("exit code 0\n\n--- answers\nours.byre: tidied\n\n--- problems\n");
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Tidy);
        _farm.Run("tidy", "--write", "ours.byre").Out.ShouldBe("ours.byre: tidy already\n");
        Directory.GetFiles(_farm.Folder).Select(Path.GetFileName).ShouldBe(["ours.byre", "recipients.byre", "spring.byre", "vocabulary.byre"], ignoreOrder: true);
    }

    [Fact]
    public void A_file_is_printed_and_left_as_it_is_unless_it_is_to_be_written()
    {
        _farm.Run("tidy", "ours.byre").ToString().ShouldBe($"exit code 0\n\n--- answers\n{Tidy}\n--- problems\n");
        _farm.Write("b.byre", "event   a");
        _farm.Run("tidy", "ours.byre", "b.byre").Out.ShouldBe($"# ours.byre\n{Tidy}# b.byre\nevent a\n");
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Untidy.ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("give one of the two", "--write", "--check", "ours.byre")]
    [InlineData("cannot be written back", "--write", "-")]
    public void What_cannot_be_done_is_said(string said, params string[] args)
    {
        _farm.Run(["tidy", .. args]).ShouldBeOneClearLine(said);
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Untidy.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Check_changes_nothing_and_shows_the_first_difference_of_each_file()
    {
        _farm.Write("long.byre", "event a\n\n\n");
        _farm.Write("spaces.byre", "event a  \n");
        var run = _farm.Run("tidy", "--check", "ours.byre", "vocabulary.byre", "long.byre", "spaces.byre");

        Snapshot.Verify(run.ToString());
        run.Code.ShouldBe(ExitCode.Bad);
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Untidy.ReplaceLineEndings("\n"));
        _farm.Run("tidy", "--write", "ours.byre").Code.ShouldBe(ExitCode.Done);
        _farm.Run("tidy", "--check", "ours.byre").ToString().ShouldBe("exit code 0\n\n--- answers\nours.byre: tidy\n\n--- problems\n");
    }

    [Fact]
    public void Line_ends_that_nobody_sees_are_said_in_words()
    {
        File.WriteAllText(_farm.At("ours.byre"), Tidy.ReplaceLineEndings("\r\n"));

        var run = _farm.Run("tidy", "--check", "ours.byre");

        run.ToString().ShouldBe("exit code 1\n\n--- answers\nours.byre: not tidy; only in signs that cannot be seen, such as the ends of its lines\n\n--- problems\n");
        _farm.Run("tidy", "--write", "ours.byre").Code.ShouldBe(ExitCode.Done);
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Tidy);
    }

    [Fact]
    public void A_file_with_an_error_is_left_alone_and_the_others_are_tidied()
    {
        _farm.Write("wrong.byre", "use   \"recipients.byre\"\nchnge \"Body condition\"\n");

        Snapshot.Verify(_farm.Run("tidy", "--write", "wrong.byre", "ours.byre").ToString());
        File.ReadAllText(_farm.At("wrong.byre")).ShouldStartWith("use   ");
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Tidy);
    }

    [Fact]
    public void A_file_that_is_not_there_ends_with_2_and_the_others_are_tidied()
    {
        var run = _farm.Run("tidy", "--write", "nothing.byre", "ours.byre");

        run.ToString().ShouldBe("exit code 2\n\n--- answers\nours.byre: tidied\n\n--- problems\nbyrelaw: no such file: nothing.byre\n");
    }

    [Fact]
    public void A_folder_is_no_rule_file() => _farm.Run("tidy", "records").ShouldBeOneClearLine("records is a folder");

    [Fact]
    public void A_file_that_may_not_be_written_to_stays_as_it_is()
    {
        File.SetAttributes(_farm.At("ours.byre"), FileAttributes.ReadOnly);

        _farm.Run("tidy", "--write", "ours.byre").ShouldBeOneClearLine("ours.byre may not be written to; nothing was changed");
        File.ReadAllText(_farm.At("ours.byre")).ShouldBe(Untidy.ReplaceLineEndings("\n"));
        File.SetAttributes(_farm.At("ours.byre"), FileAttributes.Normal);
    }

    [Fact]
    public void A_link_stays_a_link_and_the_file_it_leads_to_is_tidied_and_keeps_who_may_read_it()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Links need rights there that not everyone has.");
            return;
        }

        Directory.CreateDirectory(_farm.At("real"));
        File.WriteAllText(_farm.At("real/linked.byre"), "event   a");
        const UnixFileMode mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;
        File.SetUnixFileMode(_farm.At("real/linked.byre"), mode);
        File.CreateSymbolicLink(_farm.At("linked.byre"), "real/linked.byre");

        _farm.Run("tidy", "--write", "linked.byre").Code.ShouldBe(ExitCode.Done);

        File.ReadAllText(_farm.At("real/linked.byre")).ShouldBe("event a\n");
        new FileInfo(_farm.At("linked.byre")).LinkTarget.ShouldBe("real/linked.byre");
        File.GetUnixFileMode(_farm.At("real/linked.byre")).ShouldBe(mode);
    }

    [Fact]
    public void What_comes_in_on_the_standard_input_goes_out_tidied()
    {
        var (code, @out, err) = RunWith(Untidy, "tidy", "-");

        (code, @out, err).ShouldBe((ExitCode.Done, Tidy, ""));
    }

    [Fact]
    public void With_an_error_on_the_standard_input_nothing_goes_out()
    {
        var (code, @out, err) = RunWith("event \"a\n", "tidy", "-");

        (code, @out).ShouldBe((ExitCode.Bad, ""));
        err.ShouldStartWith("standard input:1:7: error B0101: ");
        err.ShouldEndWith("standard input: left as it is. Mend the error first.\n");
    }

    [Fact]
    public void The_standard_input_can_be_checked_too() =>
        RunWith(Untidy, "tidy", "--check", "-").ShouldBe((ExitCode.Bad, "standard input:1: not tidy; from here on it would be\n  - use   \"recipients.byre\"\n  + use \"recipients.byre\"\n", ""));

    private (int Code, string Out, string Err) RunWith(string input, params string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var doors = Doors.Plain(@out, err, _farm.Folder) with { In = () => new MemoryStream(Encoding.UTF8.GetBytes(input)) };
        return (ByrelawApp.Run(args, doors), @out.ToString(), err.ToString());
    }
}
