namespace Byrelaw.Records.Tests.Files;

public sealed class FolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("byrelaw-records-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Files_are_shown_below_the_folder_as_it_is_shown()
    {
        File.WriteAllText(Path.Combine(_folder, "animals.csv"), Read.Whole(Read.Animals));
        File.WriteAllText(Path.Combine(_folder, "events.csv"), "date,animal,kind\n2026-03-01,9999,heat\n");

        var herd = HerdReader.Read(_folder, "farm/records", Words.Vocabulary, null);

        herd.Problems.Single().File.ShouldBe("farm/records/events.csv");
        herd.Problems.Single().Found.ShouldBe("there is no animal `9999` in farm/records/animals.csv");
        herd.AnimalsFile.ShouldBe("farm/records/animals.csv");
    }

    [Fact]
    public void A_missing_file_or_folder_is_named()
    {
        File.WriteAllText(Path.Combine(_folder, "animals.csv"), Read.Whole(Read.Animals));

        Should.Throw<RecordsNotFoundException>(() => HerdReader.Read(_folder, "records", Words.Vocabulary, null))
            .Message.ShouldBe("there is no file records/events.csv");
        Should.Throw<RecordsNotFoundException>(() => HerdReader.Read(Path.Combine(_folder, "none"), "none", Words.Vocabulary, null))
            .Message.ShouldBe("there is no folder none");
    }
}
