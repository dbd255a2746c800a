using Byrelaw.Workshop.Correcting;

namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class CodeActionTests
{
    private static readonly string Wrong = Repository.At("tests/Byrelaw.Workshop.Tests/Wrong/Files");

    [Fact]
    public async Task The_change_that_mends_a_problem_is_offered_and_mends_it()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var rules = folder.At("rules.byre");
        await editor.OpenAsync(rules, Farm.Rules);
        (await editor.EditAsync(rules, "needs no mastitis", "needs no mastits")).ShouldNotBeEmpty();

        var action = (await Actions(editor, rules, 14, 12)).EnumerateArray().First();
        action.GetProperty("kind").GetString().ShouldBe("quickfix");
        action.GetProperty("title").GetString().ShouldNotBeNull().ShouldContain("mastitis");
        (await editor.ReplaceAsync(rules, Mended(action, rules, editor.Text(rules)))).ShouldBe("");
    }

    [Fact]
    public async Task Where_nothing_is_wrong_and_where_no_mend_is_wanted_nothing_is_offered()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var rules = folder.At("rules.byre");
        await editor.OpenAsync(rules, Farm.Rules);
        (await Actions(editor, rules, 14, 12)).GetArrayLength().ShouldBe(0);

        await editor.EditAsync(rules, "needs no mastitis", "needs no mastits");
        (await Actions(editor, rules, 14, 12, "refactor")).GetArrayLength().ShouldBe(0);
        (await Actions(editor, rules, 0, 0)).GetArrayLength().ShouldBe(0);
    }

    /// <summary>Of each wrong file beside the tests of the language.</summary>
    [Fact]
    public async Task Each_kind_of_problem_with_a_correction_has_a_quick_fix_that_clears_it()
    {
        await using var editor = await Editor.StartAsync(Wrong);
        var files = new EditorFiles();
        files.Folders.Add(Wrong);
        var mended = new HashSet<string>();
        var failures = new List<string>();
        foreach (var path in Directory.EnumerateFiles(Wrong, "*.byre").Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileName(path);
            var problems = RulebookReader.Read(path, files)!.Corrected().Problems.Where(problem => problem.File == name && problem.Correction is not null).ToList();
            if (problems.Count == 0)
            {
                continue;
            }

            var text = Encoding.UTF8.GetString(await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken));
            await editor.OpenAsync(path, text);
            foreach (var problem in problems)
            {
                var actions = (await Actions(editor, path, problem.Line - 1, problem.Column - 1)).EnumerateArray();
                var action = actions.FirstOrDefault(action => action.GetProperty("diagnostics")[0].GetProperty("code").GetString() == problem.Code);
                if (action.ValueKind == JsonValueKind.Undefined)
                {
                    failures.Add($"{name}: nothing is offered for {problem.Code}");
                }
                else if (IsIn(await editor.ReplaceAsync(path, Mended(action, path, text)), problem))
                {
                    failures.Add($"{name}: {problem.Code} is still there");
                }
                else
                {
                    mended.Add(problem.Code);
                }

                await editor.ReplaceAsync(path, text);
            }

            await editor.CloseAsync(path);
        }

        failures.ShouldBeEmpty();
        mended.Count.ShouldBeGreaterThan(40);
    }

    private static bool IsIn(string told, Diagnostic problem) => told.Split('\n').Any(line =>
        line.StartsWith($"{problem.Line - 1}:", StringComparison.Ordinal) && line.EndsWith($" {problem.Code} {problem.Message}", StringComparison.Ordinal));

    private static Task<JsonElement> Actions(Editor editor, string path, int line, int character, params string[] only)
    {
        var place = new { line, character };
        return editor.AskAsync("textDocument/codeAction", new
        {
            textDocument = new { uri = Editor.Uri(path) },
            range = new { start = place, end = place },
            context = new { diagnostics = Array.Empty<object>(), only },
        });
    }

    /// <summary>A document's text with an action done, the last change first, so that the places of the others stay.</summary>
    private static string Mended(JsonElement action, string path, string text)
    {
        var lines = new TextLines(text);
        var edits = action.GetProperty("edit").GetProperty("changes").GetProperty(Editor.Uri(path)).EnumerateArray()
            .Select(edit => (Start: Offset(edit, "start"), End: Offset(edit, "end"), Text: edit.GetProperty("newText").GetString()!));
        return edits.OrderByDescending(edit => edit.Start).Aggregate(text, (done, edit) => done[..edit.Start] + edit.Text + done[edit.End..]);

        int Offset(JsonElement edit, string end)
        {
            var place = edit.GetProperty("range").GetProperty(end);
            return lines.Offset(new Position(place.GetProperty("line").GetInt32(), place.GetProperty("character").GetInt32()));
        }
    }
}
