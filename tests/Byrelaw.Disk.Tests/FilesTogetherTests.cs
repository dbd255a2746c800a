namespace Byrelaw.Disk.Tests;

public sealed class FilesTogetherTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void All_are_written_and_nothing_else_is_left()
    {
        _folder.Write("rules/a.byre", "old a");
        Write("new a", "new b");
        ShouldBe("new a", "new b");
    }

    [Fact]
    public void None_is_written_where_one_cannot_come_to_its_place()
    {
        _folder.Write("rules/a.byre", "old a");
        Directory.CreateDirectory(_folder.At("b.byre/somebody's folder"));
        Should.Throw<Exception>(() => Write("new a", "new b"));
        _folder.Read("rules/a.byre").ShouldBe("old a");
        _folder.All().ShouldBe(["b.byre", "b.byre/somebody's folder", "rules", "rules/a.byre"]);
    }

    [Fact]
    public void None_is_written_where_one_is_there_that_should_be_new()
    {
        _folder.Write("b.byre", "mine");
        Should.Throw<IOException>(() => FilesTogether.Write(_folder.Path, [new("a.byre", "a"u8.ToArray()), new("b.byre", "b"u8.ToArray())], onlyNew: true))
            .Message.ShouldEndWith("b.byre is there already; nothing was changed. Give another name");
        _folder.All().ShouldBe(["b.byre"]);
    }

    [Fact]
    public void What_is_made_from_a_file_is_made_anew_where_another_program_changed_it_meanwhile()
    {
        _folder.Write("b.byre", "1");
        var times = 0;
        FilesTogether.Change(_folder.Path, () =>
        {
            var from = File.ReadAllBytes(_folder.At("b.byre"));
            if (++times == 1)
            {
                _folder.Write("b.byre", "1 and theirs");
            }

            return [new("b.byre", Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(from) + " and mine")) { MadeFrom = from }];
        });
        _folder.Read("b.byre").ShouldBe("1 and theirs and mine");
        _folder.All().ShouldBe(["b.byre"]);

        Should.Throw<IOException>(() => FilesTogether.Change(_folder.Path, () =>
        {
            _folder.Write("b.byre", $"{++times}");
            return [new("b.byre", "mine"u8.ToArray()) { MadeFrom = "something else"u8.ToArray() }];
        })).Message.ShouldContain("nothing was written");
        _folder.Read("b.byre").ShouldBe($"{times}");
        _folder.All().ShouldBe(["b.byre"]);
    }

    [Fact]
    public void Two_at_once_are_one_after_the_other_and_neither_is_lost()
    {
        _folder.Write("b.byre", "");
        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 4 }, _ => FilesTogether.Change(_folder.Path, () =>
        {
            var from = File.ReadAllBytes(_folder.At("b.byre"));
            return [new("b.byre", (byte[])[.. from, (byte)'x']) { MadeFrom = from }];
        }));
        _folder.Read("b.byre").ShouldBe("xxxxxxxx");
        _folder.All().ShouldBe(["b.byre"]);
    }

    // As a run leaves things that is cut off at each of its steps: before the name of its folder is changed nothing has happened yet, after it all has.
    [Theory]
    [InlineData(".byrelaw-files-new", 0, "old a", null)]
    [InlineData(".byrelaw-files-decided", 0, "new a", "new b")]
    [InlineData(".byrelaw-files-decided", 1, "new a", "new b")]
    [InlineData(".byrelaw-files-decided", 2, "new a", "new b")]
    [InlineData(".byrelaw-files-undone", 0, "old a", null)]
    [InlineData(".byrelaw-files-undone", 1, "old a", null)]
    [InlineData(".byrelaw-files-undone", 2, "old a", null)]
    public void What_is_cut_off_is_finished_or_undone_by_the_next(string at, int placed, string a, string? b)
    {
        CutOff(at, placed);
        FilesTogether.FinishAround(_folder.At("rules/a.byre"));
        _folder.Read("rules/a.byre").ShouldBe(a);
        File.Exists(_folder.At("b.byre")).ShouldBe(b is not null);
        Write("newer a", "newer b");
        ShouldBe("newer a", "newer b");
    }

    [Fact]
    public void An_undoing_that_is_cut_off_itself_is_finished()
    {
        CutOff(".byrelaw-files-undone", placed: 2);
        File.Move(_folder.At(".byrelaw-files-undone/old-1"), _folder.At("rules/a.byre"), overwrite: true);
        FilesTogether.FinishAround(_folder.At("b.byre"));
        _folder.Read("rules/a.byre").ShouldBe("old a");
        _folder.All().ShouldBe(["rules", "rules/a.byre"]);
    }

    private void CutOff(string at, int placed)
    {
        _folder.Write("rules/a.byre", placed > 0 ? "new a" : "old a");
        _folder.Write($"{at}/old-1", "old a");
        _folder.Write($"{at}/places.txt", "=rules/a.byre\n+b.byre\n");
        if (placed < 1)
        {
            _folder.Write($"{at}/new-1", "new a");
        }

        _folder.Write(placed < 2 ? $"{at}/new-2" : "b.byre", "new b");
    }

    private void Write(string a, string b) =>
        FilesTogether.Write(_folder.Path, [new("rules/a.byre", Encoding.UTF8.GetBytes(a)), new("b.byre", Encoding.UTF8.GetBytes(b))]);

    private void ShouldBe(string a, string b)
    {
        (_folder.Read("rules/a.byre"), _folder.Read("b.byre")).ShouldBe((a, b));
        _folder.All().ShouldBe(["b.byre", "rules", "rules/a.byre"]);
    }
}
