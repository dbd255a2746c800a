namespace Byrelaw.Cli.Tests.OnDisk;

/// <summary>What a person wrote into a report is never lost to the next one.</summary>
public sealed class FilledInTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void A_list_with_ticks_is_kept_beside_the_new_one_and_told()
    {
        Draft();
        Tick("1007");
        var again = Draft();
        again.Err.ShouldBe("out/recipients/draft.csv had been filled in or changed by hand; it is kept as out/recipients/draft.kept.csv.\n");
        File.ReadAllText(_farm.At("out/recipients/draft.kept.csv")).ShouldContain("yes");
        File.ReadAllText(_farm.At("out/recipients/draft.csv")).ShouldNotContain("yes");

        // It stays there however often the list is drawn up, and is told once.
        Draft().Err.ShouldBeEmpty();
        Tick("1012");
        Draft().Err.ShouldContain("it is kept as out/recipients/draft.kept-2.csv.");
        File.ReadAllText(_farm.At("out/recipients/draft.kept.csv")).ShouldContain("1007");
        File.ReadAllText(_farm.At("out/recipients/draft.kept-2.csv")).ShouldContain("1012");
    }

    [Fact]
    public void The_same_ticks_are_kept_once()
    {
        Draft();
        Tick("1007");
        Draft();
        Tick("1007");
        Draft().Err.ShouldBeEmpty();
        Directory.GetFiles(_farm.At("out/recipients"), "draft*").Length.ShouldBe(2);
    }

    [Fact]
    public void Notes_on_a_page_are_kept_also_when_the_animal_is_on_no_list_any_more()
    {
        Draft();
        File.AppendAllText(_farm.At("out/animals/1423.md"), "\nLame today, says the boy.\n");
        _farm.Change("records/animals.csv", "1423,554000700041423,2022-08-14,F,,Hill\n", "");
        _farm.Change("records/events.csv", "2026-09-07,1423,calving,,,,\n", "");
        _farm.Change("records/events.csv", "2026-09-18,1423,body condition,5.0,,,\n", "");
        Draft().Err.ShouldContain("out/animals/1423.md had been filled in or changed by hand; it is kept as out/animals/1423.kept.md.");
        File.ReadAllText(_farm.At("out/animals/1423.kept.md")).ShouldEndWith("Lame today, says the boy.\n");
        File.Exists(_farm.At("out/animals/1423.html")).ShouldBeFalse();
    }

    [Fact]
    public void Files_folders_and_links_of_ones_own_stay()
    {
        Draft();
        _farm.Write("out/recipients/photos/1007.txt", "a photo");
        Directory.CreateDirectory(_farm.At("out/for the vet"));
        File.CreateSymbolicLink(_farm.At("out/book.csv"), _farm.At("records/events.csv"));
        Draft().Err.ShouldBeEmpty();
        File.ReadAllText(_farm.At("out/recipients/photos/1007.txt")).ShouldBe("a photo");
        Directory.Exists(_farm.At("out/for the vet")).ShouldBeTrue();
        new FileInfo(_farm.At("out/book.csv")).LinkTarget.ShouldBe(_farm.At("records/events.csv"));
    }

    [Fact]
    public void A_note_in_the_place_of_a_new_page_is_kept_beside_it()
    {
        Draft();
        _farm.Write("out/animals/1500.md", "about a cow that will come");
        _farm.Change("records/animals.csv", "1423,554", "1500,554000700041500,2021-08-15,F,,Hill\n1423,554");
        Draft().Err.ShouldContain("out/animals/1500.md had been filled in or changed by hand; it is kept as out/animals/1500.kept.md.");
        File.ReadAllText(_farm.At("out/animals/1500.kept.md")).ShouldBe("about a cow that will come");
    }

    [Fact]
    public void A_plan_keeps_them_too()
    {
        _farm.Run("plan", "spring.byre").Code.ShouldBe(ExitCode.Done);
        File.AppendAllText(_farm.At("out-plan/index.md"), "\nThe team comes on the 13th, they say.\n");
        _farm.Run("plan", "spring.byre").Err.ShouldContain("out-plan/index.md had been filled in or changed by hand; it is kept as out-plan/index.kept.md.");
        File.ReadAllText(_farm.At("out-plan/index.kept.md")).ShouldEndWith("they say.\n");
    }

    [Fact]
    public void A_linked_folder_stays_a_link()
    {
        Directory.CreateDirectory(_farm.At("shared/lists"));
        Directory.CreateSymbolicLink(_farm.At("out"), _farm.At("shared/lists"));
        Draft();
        Draft();
        new DirectoryInfo(_farm.At("out")).LinkTarget.ShouldBe(_farm.At("shared/lists"));
        File.Exists(_farm.At("shared/lists/recipients/draft.csv")).ShouldBeTrue();
        Directory.GetFileSystemEntries(_farm.At("shared")).ShouldBe([_farm.At("shared/lists")]);
    }

    private Run Draft()
    {
        var run = _farm.Run("draft", "spring.byre");
        run.Code.ShouldBe(ExitCode.Done, run.Err);
        return run;
    }

    /// <summary>Writes yes behind an animal's last column.</summary>
    private void Tick(string animal)
    {
        var lines = File.ReadAllText(_farm.At("out/recipients/draft.csv")).Split("\r\n");
        var at = Array.FindIndex(lines, line => line.StartsWith($"1,{animal},", StringComparison.Ordinal));
        lines[at] += ",yes";
        File.WriteAllText(_farm.At("out/recipients/draft.csv"), string.Join("\r\n", lines));
    }
}
