namespace Byrelaw.Reporting.Tests.Files;

public sealed class ReportFolderTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("byrelaw-report-").FullName;

    private string Target => Path.Combine(_root, "out");

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_new_report_replaces_the_older_one_and_leaves_notes_beside_it_alone()
    {
        ReportFolder.Write(Target, [new("index.md", "old"), new("recipients/animals/1.md", "old")]);
        File.WriteAllText(Path.Combine(Target, "recipients", "my notes.txt"), "mine");
        ReportFolder.Write(Target, [new("index.md", "new")]);
        File.ReadAllText(Path.Combine(Target, "index.md")).ShouldBe("new");
        File.Exists(Path.Combine(Target, "recipients", "animals", "1.md")).ShouldBeFalse();
        File.ReadAllText(Path.Combine(Target, "recipients", "my notes.txt")).ShouldBe("mine");
        Directory.EnumerateFileSystemEntries(_root).ShouldBe([Target]);
    }

    [Fact]
    public void A_report_that_cannot_be_made_whole_leaves_the_older_one_as_it_was()
    {
        ReportFolder.Write(Target, [new("index.md", "old")]);
        static IEnumerable<ReportFile> Failing()
        {
            yield return new ReportFile("index.md", "new");
            throw new IOException("no space left");
        }

        Should.Throw<IOException>(() => ReportFolder.Write(Target, Failing())).Message.ShouldBe("no space left");
        File.ReadAllText(Path.Combine(Target, "index.md")).ShouldBe("old");
        Directory.EnumerateFileSystemEntries(_root).ShouldBe([Target]);
    }

    [Fact]
    public void A_folder_with_someones_work_in_it_is_refused()
    {
        Directory.CreateDirectory(Target);
        File.WriteAllText(Path.Combine(Target, "thesis.txt"), "years of it");
        Should.Throw<IOException>(() => ReportFolder.Write(Target, [new("index.md", "x")])).Message.ShouldContain("not a report");
        Directory.EnumerateFiles(Target).Select(Path.GetFileName).ShouldBe(["thesis.txt"]);
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_refused()
    {
        File.WriteAllText(Target, "a file");
        Should.Throw<IOException>(() => ReportFolder.Write(Target, [new("index.md", "x")])).Message.ShouldContain("is a file");
        File.ReadAllText(Target).ShouldBe("a file");
    }
}
