namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class DiagnosticsTests
{
    [Fact]
    public async Task What_is_wrong_is_told_on_opening_and_after_an_edit()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var rules = folder.At("rules.byre");
        (await editor.OpenAsync(rules, Farm.Rules)).ShouldBe("");
        (await editor.EditAsync(rules, "needs no mastitis", "needs no mastits")).ShouldStartWith("14:11-18 error B0204 ");
        (await editor.EditAsync(rules, "needs no mastits", "needs no mastitis")).ShouldBe("");
    }

    [Fact]
    public async Task A_used_file_that_is_open_counts_as_it_stands_in_the_editor()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var (rules, words) = (folder.At("rules.byre"), folder.At("words.byre"));
        (await editor.OpenAsync(rules, Farm.Rules)).ShouldBe("");
        (await editor.OpenAsync(words, Farm.Words)).ShouldBe("");

        (await editor.EditAsync(words, "event mastitis", "event udder infection")).ShouldBe("");
        await editor.ProblemsAsync(rules, "14:11-19 error B0204 ");

        await editor.CloseAsync(words);
        (await editor.EditAsync(rules, "It spreads.", "It spreads fast.")).ShouldBe("");
    }

    [Fact]
    public async Task A_used_file_on_disk_is_told_of_too_and_a_change_on_disk_is_seen()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var (rules, words) = (folder.At("rules.byre"), folder.At("words.byre"));
        await editor.OpenAsync(rules, Farm.Rules);
        folder.Write("words.byre", Farm.Words.Replace("on scale 1 to 10", "on scale 10 to 1", StringComparison.Ordinal));
        await editor.TellAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = Editor.Uri(words), type = 2 } } });
        await editor.ProblemsAsync(words, "11:24-");

        File.Delete(words);
        await editor.TellAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = Editor.Uri(words), type = 3 } } });
        await editor.ProblemsAsync(rules, "0:4-16 error B0002 ");
        await editor.ProblemsAsync(words, "");
    }

    [Fact]
    public async Task Places_are_right_after_tabs_and_signs_of_two_units()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        (await editor.OpenAsync(folder.At("a.byre"), "event heat\r\n\r\ndefine \"𐐷 early\"\r\n\tno \"𐐷\" or hat ever\r\n")).ShouldStartWith("3:4-8 error B0204");
    }

    [Fact]
    public async Task A_document_that_is_not_saved_yet_is_served_too()
    {
        await using var editor = await Editor.StartAsync();
        (await editor.OpenAsync("untitled:Untitled-1", "event heat\ndefine x\n  no hat ever\n")).ShouldStartWith("2:5-8 error B0204");
    }

    [Fact]
    public async Task A_document_of_more_bytes_than_the_reader_takes_is_one_problem()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("huge.byre");
        (await editor.OpenAsync(path, new string('#', 3_000_000))).Split(" error ").Length.ShouldBe(2);
        var hover = await editor.AskAsync("textDocument/hover", new { textDocument = new { uri = Editor.Uri(path) }, position = new { line = 0, character = 5 } });
        hover.ValueKind.ShouldBe(System.Text.Json.JsonValueKind.Null);
    }

    [Fact]
    public async Task Of_edits_that_come_together_the_last_is_answered()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("many.byre");
        await editor.OpenAsync(path, ThousandRules.Text);
        for (var version = 2; version < 40; version++)
        {
            await editor.TellAsync("textDocument/didChange", new { textDocument = new { uri = Editor.Uri(path), version }, contentChanges = new[] { new { text = ThousandRules.Text + new string('\n', version) } } });
        }

        await editor.TellAsync("textDocument/didChange", new { textDocument = new { uri = Editor.Uri(path), version = 40 }, contentChanges = new[] { new { text = "event\n" } } });
        await editor.ProblemsAsync(path, "0:5-5 error");
    }
}
