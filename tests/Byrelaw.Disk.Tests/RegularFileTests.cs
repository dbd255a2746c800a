using System.Diagnostics;

namespace Byrelaw.Disk.Tests;

public sealed class RegularFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_file_is_read_and_a_folder_or_nothing_is_not()
    {
        _folder.Write("a.txt", "words");
        RegularFile.Read(_folder.At("a.txt")).ShouldBe("words"u8.ToArray());
        RegularFile.Read(_folder.At("b.txt")).ShouldBeNull();
        RegularFile.Read(_folder.Path).ShouldBeNull();
    }

    [Fact]
    public void A_link_to_a_file_is_read()
    {
        _folder.Write("a.txt", "words");
        File.CreateSymbolicLink(_folder.At("link"), _folder.At("a.txt"));
        RegularFile.Read(_folder.At("link")).ShouldBe("words"u8.ToArray());
    }

    // Source for what these are: man 4 null, man 4 zero, man 7 fifo.
    [Theory]
    [InlineData("/dev/zero")]
    [InlineData("/dev/null")]
    [InlineData("pipe")]
    [InlineData("link to the pipe")]
    public void A_device_and_a_pipe_are_refused_before_they_are_opened(string path)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "pipes and devices are made by mkfifo here");
        using (var made = Process.Start("mkfifo", [_folder.At("pipe")]))
        {
            made.WaitForExit();
        }

        File.CreateSymbolicLink(_folder.At("link to the pipe"), _folder.At("pipe"));
        Should.Throw<IOException>(() => RegularFile.Read(path[0] == '/' ? path : _folder.At(path))).Message.ShouldContain("is a pipe or a device, not a file");
    }
}
