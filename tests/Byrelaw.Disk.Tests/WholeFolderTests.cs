namespace Byrelaw.Disk.Tests;

public sealed class WholeFolderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Place => _folder.At("out");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_folder_takes_the_place_of_the_one_before_it_in_one_step()
    {
        Write("old");
        var seen = new List<bool>();
        using var stop = new CancellationTokenSource();
        var watcher = Task.Run(() =>
        {
            while (!stop.IsCancellationRequested)
            {
                seen.Add(File.Exists(_folder.At("out/index.html")));
            }
        });
        for (var i = 0; i < 300; i++)
        {
            Write($"new {i}");
        }

        await stop.CancelAsync();
        await watcher;
        _folder.Read("out/index.html").ShouldBe("new 299");
        _folder.All().ShouldBe(["out", "out/index.html"]);
        seen.Count.ShouldBeGreaterThan(100);
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "two steps are needed there, and the next run mends what is cut off between them");
        seen.ShouldAllBe(isThere => isThere);
    }

    [Fact]
    public void A_link_stays_a_link()
    {
        Directory.CreateDirectory(_folder.At("kept/reports"));
        Directory.CreateSymbolicLink(Place, _folder.At("kept/reports"));
        Write("new");
        new DirectoryInfo(Place).LinkTarget.ShouldBe(_folder.At("kept/reports"));
        _folder.Read("kept/reports/index.html").ShouldBe("new");
        _folder.All().ShouldBe(["kept", "kept/reports", "kept/reports/index.html"]);
    }

    [Fact]
    public void A_link_that_leads_to_no_folder_yet_gets_one()
    {
        Directory.CreateSymbolicLink(Place, _folder.At("kept/reports"));
        Write("new");
        new DirectoryInfo(Place).LinkTarget.ShouldBe(_folder.At("kept/reports"));
        _folder.Read("kept/reports/index.html").ShouldBe("new");
    }

    [Fact]
    public void Who_may_read_a_folder_stays()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("who may read a folder is said otherwise there");
            return;
        }

        const UnixFileMode Shared = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute;
        Write("old");
        File.SetUnixFileMode(Place, Shared);
        Write("new");
        File.GetUnixFileMode(Place).ShouldBe(Shared);
    }

    [Fact]
    public void What_cannot_be_filled_leaves_the_one_before_as_it_was()
    {
        Write("old");
        Should.Throw<IOException>(() => WholeFolder.Write(Place, (_, fresh) =>
        {
            WholeFolder.Put(fresh, "index.html", "half"u8);
            throw new IOException("no space left");
        }));
        _folder.Read("out/index.html").ShouldBe("old");
        _folder.All().ShouldBe(["out", "out/index.html"]);
    }

    [Fact]
    public void What_cannot_be_finished_late_gives_the_one_before_its_place_back()
    {
        Write("old");
        Should.Throw<IOException>(() => WholeFolder.Write(
            Place, (_, fresh) => WholeFolder.Put(fresh, "index.html", "new"u8), late: (_, _) => throw new IOException("no space left")));
        _folder.Read("out/index.html").ShouldBe("old");
        _folder.All().ShouldBe(["out", "out/index.html"]);
    }

    private void Write(string text) => WholeFolder.Write(Place, (_, fresh) => WholeFolder.Put(fresh, "index.html", Encoding.UTF8.GetBytes(text)));
}
