namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class NavigationTests
{
    [Theory]
    [InlineData("rules.byre", "no masti|tis in", "words.byre 5:6-14")]
    [InlineData("rules.byre", "at least 1 |heat", "words.byre 3:6-10")]
    [InlineData("rules.byre", "needs cyc|ling", "rules.byre 2:7-14")]
    [InlineData("rules.byre", "ever is nega|tive", "words.byre 13:34-42")]
    [InlineData("rules.byre", "use \"words|.byre\"", "words.byre 0:0-0")]
    [InlineData("farm.byre", "change \"Eight| weeks", "rules.byre 7:6-24")]
    [InlineData("farm.byre", "choose reci|pients", "rules.byre 5:10-20")]
    [InlineData("farm.byre", "after coll|ection", "farm.byre 7:2-12")]
    [InlineData("farm.byre", "from first| transfer", "farm.byre 8:2-47")]
    [InlineData("rules.byre", "needs |no mastitis", "")]
    [InlineData("words.byre", "from bull| in until", "words.byre 6:6-13")]
    public async Task A_name_leads_to_where_it_is_declared(string file, string marked, string expected)
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var found = await editor.AskAsync("textDocument/definition", editor.At(folder.At(file), marked));
        string.Join(", ", found.EnumerateArray().Select(Place)).ShouldBe(expected);
    }

    [Fact]
    public async Task Every_use_is_found_in_all_files()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var asked = editor.At(folder.At("rules.byre"), "last calv|ing", new { context = new { includeDeclaration = true } });
        var found = await editor.AskAsync("textDocument/references", asked);
        found.EnumerateArray().Select(Place).Order(StringComparer.Ordinal).ShouldBe([
            "farm.byre 4:15-22", "farm.byre 12:36-43", "rules.byre 3:29-36", "rules.byre 9:36-43", "words.byre 2:20-28", "words.byre 2:30-36", "words.byre 2:6-13",
        ], ignoreOrder: true);
    }

    [Fact]
    public async Task The_blocks_of_a_file_are_listed()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var symbols = await editor.AskAsync("textDocument/documentSymbol", new { textDocument = new { uri = Editor.Uri(folder.At("rules.byre")) } });
        Outline(symbols, "").ShouldBe("""
            words.byre (use) 0-0
            cycling (define) 2-3
            recipients (rules) 5-28
              Eight weeks calved (rule) 7-11
              Udder sound (rule) 13-15
              Cycling (rule) 17-19
              Free of BVD (rule) 21-23
              Good condition (prefer) 25-28

            """);
    }

    [Fact]
    public async Task Records_within_an_example_start_no_block()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("a.byre");
        await editor.OpenAsync(path, "example \"One\"\n  cow born 2021\n  records to 2026-10-01\n  judged on 2026-10-01\n\nrecords \"records\"\n  up to 2026-10-01\n");
        var symbols = await editor.AskAsync("textDocument/documentSymbol", new { textDocument = new { uri = Editor.Uri(path) } });
        Outline(symbols, "").ShouldBe("One (example) 0-3\nrecords (records) 5-6\n");
    }

    [Fact]
    public async Task Blocks_and_comments_fold()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var folds = await editor.AskAsync("textDocument/foldingRange", new { textDocument = new { uri = Editor.Uri(folder.At("words.byre")) } });
        folds.ToString().ShouldBe("""[{"startLine":0,"endLine":1,"kind":"comment"}]""");
        folds = await editor.AskAsync("textDocument/foldingRange", new { textDocument = new { uri = Editor.Uri(folder.At("farm.byre")) } });
        string.Join(' ', folds.EnumerateArray().Select(fold => $"{fold.GetProperty("startLine")}-{fold.GetProperty("endLine")}")).ShouldBe("2-4 6-9 11-14");
    }

    [Fact]
    public async Task The_same_name_is_marked_within_a_document()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Opened(folder);
        var marks = await editor.AskAsync("textDocument/documentHighlight", editor.At(folder.At("words.byre"), "event bull| in"));
        marks.GetArrayLength().ShouldBe(2);
    }

    private static async Task<Editor> Opened(TemporaryFolder folder)
    {
        Farm.Write(folder);
        var editor = await Editor.StartAsync(folder.Path);
        (await editor.OpenAsync(folder.At("rules.byre"), Farm.Rules)).ShouldBe("");
        (await editor.OpenAsync(folder.At("farm.byre"), Farm.Programme)).ShouldBe("");
        (await editor.OpenAsync(folder.At("words.byre"), Farm.Words)).ShouldBe("");
        return editor;
    }

    private static string Place(JsonElement location)
    {
        var (start, end) = (location.GetProperty("range").GetProperty("start"), location.GetProperty("range").GetProperty("end"));
        return $"{Path.GetFileName(location.GetProperty("uri").GetString())} {start.GetProperty("line")}:{start.GetProperty("character")}-{end.GetProperty("character")}";
    }

    private static string Outline(JsonElement symbols, string indent) => string.Concat(symbols.EnumerateArray().Select(symbol =>
    {
        var range = symbol.GetProperty("range");
        return $"{indent}{symbol.GetProperty("name")} ({symbol.GetProperty("detail")}) {range.GetProperty("start").GetProperty("line")}-{range.GetProperty("end").GetProperty("line")}\n"
            + (symbol.TryGetProperty("children", out var children) ? Outline(children, indent + "  ") : "");
    }));
}
