namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class RenameTests
{
    [Fact]
    public async Task A_name_changes_in_every_file_and_the_files_still_read()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var edits = await editor.AskAsync("textDocument/rename", editor.At(folder.At("rules.byre"), "no masti|tis in", new { newName = "udder infection" }));
        Edits(edits).ShouldBe(["farm.byre 4:30-38", "rules.byre 14:11-19", "words.byre 5:6-14"], ignoreOrder: true);
    }

    [Fact]
    public async Task Only_the_spelling_under_the_pointer_changes()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var edits = await editor.AskAsync("textDocument/rename", editor.At(folder.At("words.byre"), "heats, bull|ing", new { newName = "bulls" }));
        Edits(edits).ShouldBe(["words.byre 3:24-31"]);
    }

    [Fact]
    public async Task A_rule_changes_its_name_within_its_quotes()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var edits = await editor.AskAsync("textDocument/rename", editor.At(folder.At("farm.byre"), "change \"Eight| weeks", new { newName = "At least \"eight\" weeks" }));
        Edits(edits).ShouldBe(["farm.byre 11:8-26", "rules.byre 7:6-24"], ignoreOrder: true);
        edits.ToString().ShouldContain("""At least \\\u0022eight\\\u0022 weeks""");
    }

    [Theory]
    [InlineData("rules.byre", "no masti|tis in", "heat", "`heat` is taken: it is an event already")]
    [InlineData("words.byre", "event he|at", "bulling", "`bulling` is taken: it is another name of the same thing")]
    [InlineData("words.byre", "event he|at", "first or second heat", "`first or second heat` could only be written in quotes, because the language keeps a word or a sign in it for itself; choose other words")]
    [InlineData("words.byre", "event he|at", " ", "a name is some words on one line")]
    [InlineData("words.byre", "event masti|tis", "positive BVD virus", "with that name words.byre, line 14, would no longer read: `positive BVD virus` can be read two ways")]
    [InlineData("rules.byre", "needs cyc|ling", "females", "`females` is taken: it is a word of the language already")]
    [InlineData("rules.byre", "rule \"Udder| sound", "Cycling", "`Cycling` is taken: it is a rule or a preference already")]
    [InlineData("farm.byre", "after coll|ection", "flushing day", "`collection` is a word of the language itself and keeps its name")]
    [InlineData("rules.byre", "applies to co|ws", "ladies", "`cows` is a word of the language itself and keeps its name")]
    [InlineData("rules.byre", "at lea|st 56", "most", "no name stands here that could be changed")]
    public async Task A_name_that_does_no_good_is_refused_with_the_reason(string file, string marked, string name, string reason)
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        (await editor.RefusalAsync("textDocument/rename", editor.At(folder.At(file), marked, new { newName = name }))).ShouldStartWith(reason);
    }

    [Fact]
    public async Task What_would_be_renamed_is_shown_first()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var shown = await editor.AskAsync("textDocument/prepareRename", editor.At(folder.At("farm.byre"), "change \"Eight| weeks"));
        shown.GetProperty("placeholder").GetString().ShouldBe("Eight weeks calved");
        await editor.RefusalAsync("textDocument/prepareRename", editor.At(folder.At("farm.byre"), "agreed |by"));
    }

    private static async Task<Editor> Opened(TemporaryFolder folder)
    {
        Farm.Write(folder);
        var editor = await Editor.StartAsync(folder.Path);
        await editor.OpenAsync(folder.At("rules.byre"), Farm.Rules);
        await editor.OpenAsync(folder.At("farm.byre"), Farm.Programme);
        await editor.OpenAsync(folder.At("words.byre"), Farm.Words);
        return editor;
    }

    private static IEnumerable<string> Edits(JsonElement edits) =>
        from file in edits.GetProperty("changes").EnumerateObject()
        from edit in file.Value.EnumerateArray()
        let range = edit.GetProperty("range")
        select $"{Path.GetFileName(file.Name)} {range.GetProperty("start").GetProperty("line")}:{range.GetProperty("start").GetProperty("character")}-{range.GetProperty("end").GetProperty("character")}";
}
