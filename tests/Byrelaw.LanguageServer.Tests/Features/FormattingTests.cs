namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class FormattingTests
{
    [Fact]
    public async Task An_untidy_document_is_printed_the_one_way_and_a_tidy_one_is_left()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("a.byre");
        await editor.OpenAsync(path, "event   heat\ndefine   cycling\n      at least 1   heat ever\n");
        var edits = await editor.AskAsync("textDocument/formatting", Asked(path));
        var tidied = edits.EnumerateArray().Single().GetProperty("newText").GetString()!;
        tidied.ShouldContain("  at least 1 heat ever\n");

        var tidy = folder.At("b.byre");
        await editor.OpenAsync(tidy, tidied);
        (await editor.AskAsync("textDocument/formatting", Asked(tidy))).GetArrayLength().ShouldBe(0);
    }

    [Fact]
    public async Task A_document_with_an_error_is_left_as_it_is_and_the_reason_told()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("a.byre");
        await editor.OpenAsync(path, "event   heat\ndefine cycling\n  at least 1 hat ever\n");
        (await editor.RefusalAsync("textDocument/formatting", Asked(path))).ShouldStartWith("a file with errors is left as it is; the first is in a.byre, line 3: ");
    }

    private static object Asked(string path) => new { textDocument = new { uri = Editor.Uri(path) }, options = new { tabSize = 2, insertSpaces = true } };
}
