namespace Byrelaw.Cli.Tests;

public sealed class PackTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_programme_is_packed_and_unpacked_byte_for_byte()
    {
        _farm.Write("rules/extra.byre", "# The vet's own words\n");
        _farm.Change("spring.byre", "use \"recipients.byre\"", "use \"recipients.byre\"\nuse \"rules/extra.byre\"");
        var packed = _farm.Run("pack", "spring.byre", "-o", "hand-on.pack");
        var unpacked = _farm.Run("unpack", "hand-on.pack", "there");
        foreach (var file in new[] { "spring.byre", "recipients.byre", "vocabulary.byre", "rules/extra.byre" })
        {
            File.ReadAllBytes(_farm.At("there/" + file)).ShouldBe(File.ReadAllBytes(_farm.At(file)));
        }

        Snapshot.Verify(WithoutDigests($"{packed}\n{unpacked}"));
    }

    [Fact]
    public void A_pack_reads_as_plain_text()
    {
        _farm.Write("one.byre", "event heat   # bulling, as we say\n");
        _farm.Run("pack", "one.byre", "--out", "one.pack").Code.ShouldBe(ExitCode.Done);
        Snapshot.Verify(File.ReadAllText(_farm.At("one.pack")));
    }

    [Fact]
    public void Packs_of_the_same_rules_are_counted_where_they_lie()
    {
        _farm.Run("pack", "spring.byre", "-o", "a.pack").Out.ShouldContain("a.pack: number 1, ");
        _farm.Run("pack", "recipients.byre", "-o", "other.pack").Out.ShouldContain("other.pack: number 1, ");
        _farm.Run("pack", "spring.byre", "-o", "b.pack").Out.ShouldContain("b.pack: number 2, ");
        _farm.Run("pack", "spring.byre", "-o", "c.pack", "--number", "7").Out.ShouldContain("c.pack: number 7, ");
        _farm.Run("pack", "spring.byre", "-o", "d.pack", "--number", "0").ShouldBeOneClearLine("--number wants a whole number from 1 on");
    }

    [Fact]
    public void A_key_that_others_may_read_is_warned_of()
    {
        _farm.Run("key", "adviser.key").Code.ShouldBe(ExitCode.Done);
        _farm.Run("pack", "spring.byre", "-o", "a.pack", "--sign", "adviser.key").Err.ShouldBeEmpty();
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("who may read a file is said otherwise there");
            return;
        }

        File.SetUnixFileMode(_farm.At("adviser.key"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        _farm.Run("pack", "spring.byre", "-o", "b.pack", "--sign", "adviser.key").Err
            .ShouldBe("warning: others on this machine may read adviser.key, and whoever reads it can sign in your name. Keep it to yourself: chmod 600 adviser.key\n");
    }

    [Fact]
    public void A_file_that_differs_is_not_written_over_unless_that_is_asked_for()
    {
        _farm.Run("pack", "spring.byre", "-o", "hand-on.pack");
        _farm.Change("recipients.byre", "at least 56 days", "at least 63 days");
        var mine = File.ReadAllText(_farm.At("recipients.byre"));
        var refused = _farm.Run("unpack", "hand-on.pack", ".");
        refused.Code.ShouldBe(ExitCode.Bad);
        File.ReadAllText(_farm.At("recipients.byre")).ShouldBe(mine);
        Snapshot.Verify(WithoutDigests(refused.ToString()));

        _farm.Run("unpack", "hand-on.pack", ".", "--replace").Code.ShouldBe(ExitCode.Done);
        File.ReadAllText(_farm.At("recipients.byre")).ShouldContain("at least 56 days");
    }

    [Fact]
    public void Rules_that_are_there_and_cannot_be_read_are_told_and_do_not_stop_it()
    {
        _farm.Run("pack", "spring.byre", "-o", "hand-on.pack");
        _farm.Change("recipients.byre", "at least 56 days", "at leest 56 days");
        var run = _farm.Run("unpack", "hand-on.pack", ".", "--replace");
        run.Code.ShouldBe(ExitCode.Done);
        run.Out.ShouldContain("\nspring.byre has errors, so the rules there cannot be compared with those of the pack; byrelaw check says what is wrong.\n");
        File.ReadAllText(_farm.At("recipients.byre")).ShouldContain("at least 56 days");
    }

    [Fact]
    public void A_remark_that_differs_changes_no_rule()
    {
        _farm.Run("pack", "spring.byre", "-o", "hand-on.pack");
        File.AppendAllText(_farm.At("recipients.byre"), "# read it over\n");
        _farm.Run("unpack", "hand-on.pack", ".").Out.ShouldContain("\nThe files differ, and the rules say the same.\n");
    }

    [Fact]
    public void A_signed_pack_is_taken_from_whom_it_should_come_and_from_nobody_else()
    {
        _farm.Run("key", "adviser.key").Code.ShouldBe(ExitCode.Done);
        _farm.Run("key", "stranger.key").Code.ShouldBe(ExitCode.Done);
        _farm.Run("pack", "spring.byre", "-o", "signed.pack", "--sign", "adviser.key").Out.ShouldContain(", signed");
        _farm.Run("pack", "spring.byre", "-o", "bare.pack").Out.ShouldContain(", not signed");

        _farm.Run("unpack", "signed.pack", "a", "--signed-by", "adviser.key.pub").Code.ShouldBe(ExitCode.Done);
        var stranger = _farm.Run("unpack", "signed.pack", "b", "--signed-by", "stranger.key.pub");
        stranger.Code.ShouldBe(ExitCode.Bad);
        stranger.Err.ShouldContain("another key than stranger.key.pub has signed it");
        _farm.Run("unpack", "bare.pack", "b", "--signed-by", "adviser.key.pub").Err.ShouldContain("nobody has signed it");
        Directory.Exists(_farm.At("b")).ShouldBeFalse();
    }

    [Fact]
    public void A_pack_changed_on_its_way_is_refused_with_its_line()
    {
        _farm.Run("pack", "spring.byre", "-o", "hand-on.pack");
        _farm.Change("hand-on.pack", "56 days since last calving\n  because", "57 days since last calving\n  because");
        var run = _farm.Run("unpack", "hand-on.pack", "there");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Out.ShouldBeEmpty();
        run.Err.ShouldBe(
            """
            hand-on.pack:7: error: what follows is not what was packed: its SHA-256 is another
              help: it was changed on its way; ask for it again, as an attached file and not as text in a message
            Nothing was unpacked.

            """.ReplaceLineEndings("\n"));
        Directory.Exists(_farm.At("there")).ShouldBeFalse();
    }

    [Fact]
    public void A_file_with_errors_is_not_packed()
    {
        _farm.Change("recipients.byre", "since last calving\n  because", "since last clving\n  because");
        var run = _farm.Run("pack", "spring.byre", "-o", "hand-on.pack");
        run.Code.ShouldBe(ExitCode.Bad);
        run.Err.ShouldContain("What is packed must be whole");
        File.Exists(_farm.At("hand-on.pack")).ShouldBeFalse();
    }

    [Fact]
    public void Nothing_is_packed_over_what_is_there() => _farm.Run("pack", "spring.byre", "-o", "vocabulary.byre").ShouldBeOneClearLine("vocabulary.byre is there already");

    [Fact]
    public void A_link_out_of_the_folder_is_not_followed()
    {
        _farm.Write("rules/extra.byre", "event heat\n");
        _farm.Run("pack", "rules/extra.byre", "-o", "one.pack");
        _farm.Write("one.byre", "use \"rules/extra.byre\"\n");
        _farm.Run("pack", "one.byre", "-o", "two.pack");
        Directory.CreateDirectory(_farm.At("there"));
        Directory.CreateSymbolicLink(_farm.At("there/rules"), _farm.At("rules"));
        _farm.Run("unpack", "two.pack", "there").Code.ShouldBe(ExitCode.CouldNot);
    }

    private static string WithoutDigests(string text) => System.Text.RegularExpressions.Regex.Replace(text, "sha256:[0-9a-f]{64}", "sha256:…");
}
