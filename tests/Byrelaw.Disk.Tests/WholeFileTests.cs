namespace Byrelaw.Disk.Tests;

public sealed class WholeFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_new_file_is_written_once_and_never_over_another()
    {
        WholeFile.WriteNew(_folder.At("a/b.txt"), "one"u8).ShouldBeTrue();
        WholeFile.WriteNew(_folder.At("a/b.txt"), "two"u8).ShouldBeFalse();
        _folder.Read("a/b.txt").ShouldBe("one");
        _folder.All().ShouldBe(["a", "a/b.txt"]);
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_something_that_is_there()
    {
        File.CreateSymbolicLink(_folder.At("link"), _folder.At("gone"));
        WholeFile.WriteNew(_folder.At("link"), "one"u8).ShouldBeFalse();
        File.Exists(_folder.At("gone")).ShouldBeFalse();
    }

    [Fact]
    public void A_replaced_file_keeps_its_link_and_who_may_read_it()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("who may read a file is said otherwise there");
            return;
        }

        _folder.Write("kept/a.txt", "old");
        File.SetUnixFileMode(_folder.At("kept/a.txt"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        File.CreateSymbolicLink(_folder.At("link"), _folder.At("kept/a.txt"));
        WholeFile.Replace(_folder.At("link"), "new"u8);
        _folder.Read("kept/a.txt").ShouldBe("new");
        new FileInfo(_folder.At("link")).LinkTarget.ShouldBe(_folder.At("kept/a.txt"));
        File.GetUnixFileMode(_folder.At("kept/a.txt")).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
    }

    [Fact]
    public void A_file_that_may_not_be_written_to_is_left_alone()
    {
        _folder.Write("a.txt", "old");
        File.SetAttributes(_folder.At("a.txt"), FileAttributes.ReadOnly);
        Should.Throw<UnauthorizedAccessException>(() => WholeFile.Replace(_folder.At("a.txt"), "new"u8)).Message.ShouldContain("may not be written to; nothing was changed");
        _folder.Read("a.txt").ShouldBe("old");
        File.SetAttributes(_folder.At("a.txt"), FileAttributes.Normal);
    }
}
