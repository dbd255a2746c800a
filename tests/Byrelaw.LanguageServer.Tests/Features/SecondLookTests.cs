namespace Byrelaw.LanguageServer.Tests.Features;

/// <summary>Worked examples and trouble, which an editor is told of when the typing pauses.</summary>
public sealed class SecondLookTests
{
    private const string Tight = """
        use "words.byre"

        rules for recipients

        rule "Late"
          needs at least 56 days since last calving
          because "The uterus needs time."
          source "common practice, no source"

        rule "Early"
          needs at most 40 days since last calving
          because "The season is short."
          source "made up"

        """;

    private const string Example = """
        use "words.byre"

        rules for recipients

        rule "Late"
          needs at least 56 days since last calving
          because "The uterus needs time."
          source "common practice, no source"

        example "Just calved"
          cow born 2020
          calving 2026-10-01
          judged on 2026-10-19
          expect "Late" met

        """;

    [Fact]
    public async Task Trouble_is_told_once_the_typing_pauses()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("tight.byre");
        (await editor.OpenAsync(path, Tight)).ShouldBe("");

        var told = await editor.ProblemsAsync(path, "10:8-");
        told.ShouldStartWith("10:8-42 warning B1103 no animal can meet this and `Late` (tight.byre, line 6); `at least 56 days");
        told.ShouldContain("\nfor example:\n  ");
        told.ShouldContain("\nhelp: change one of them");
    }

    [Fact]
    public async Task Trouble_that_is_accepted_is_told_no_more()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("tight.byre");
        await editor.OpenAsync(path, Tight);
        await editor.ProblemsAsync(path, "10:8-42 warning B1103");

        const string Accepted = "source \"made up\"\n\naccept \"Early\" as never met with \"Late\"\n  because \"Only one of them is left in before the season.\"\n  agreed by \"herd vet\" on 2026-06-14\n";
        (await editor.EditAsync(path, "source \"made up\"\n", Accepted)).ShouldStartWith("10:8-42 warning B1103");
        await editor.ProblemsAsync(path, "");
    }

    [Fact]
    public async Task An_example_that_fails_is_told_and_no_more_when_it_holds()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("example.byre");
        (await editor.OpenAsync(path, Example)).ShouldBe("");
        await editor.ProblemsAsync(path, "13:2-19 error B1020 `Late` came out `not met`; the example expects `met`");

        (await editor.EditAsync(path, "calving 2026-10-01", "calving 2026-08-01")).ShouldStartWith("13:2-19 error B1020");
        await editor.ProblemsAsync(path, "");
    }

    [Fact]
    public async Task An_example_of_a_used_file_counts_too()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        var example = folder.Write("example.byre", Example);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("season.byre");
        (await editor.OpenAsync(path, "use \"example.byre\"\n")).ShouldBe("");
        await editor.ProblemsAsync(example, "13:2-19 error B1020");
    }

    [Fact]
    public async Task Until_the_next_look_findings_move_with_their_lines_and_go_with_them()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("tight.byre");
        await editor.OpenAsync(path, Tight);
        await editor.ProblemsAsync(path, "10:8-42 warning B1103");

        (await editor.EditAsync(path, "rules for recipients\n", "# One line,\n# and another.\nrules for recipients\n")).ShouldStartWith("12:8-42 warning B1103");
        (await editor.EditAsync(path, "at most 40 days", "at most 400 days")).ShouldBe("");
        (await editor.EditAsync(path, "at most 400 days", "at most 50 days")).ShouldBe("");
        await editor.ProblemsAsync(path, "12:8-42 warning B1103");
    }

    [Fact]
    public async Task Of_a_text_that_has_changed_nothing_is_told_any_more()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var (changed, other) = (folder.At("changed.byre"), folder.At("other.byre"));
        await editor.OpenAsync(changed, Tight);
        await editor.EditAsync(changed, "at most 40 days", "at most 90 days");
        await editor.OpenAsync(other, Tight);

        // When the other's trouble is told, so would be what was found in the first text.
        await editor.ProblemsAsync(other, "10:8-42 warning B1103");
        editor.Told(changed).Where(told => told.Version == 2).ShouldAllBe(told => told.Text.Length == 0);
    }
}
