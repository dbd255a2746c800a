using System.Text.Json;
using Byrelaw.LanguageServer.Tests.Support;

namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class CodeActionTests
{
    [Fact]
    public async Task The_change_that_mends_a_problem_is_offered_and_mends_it()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var rules = folder.At("rules.byre");
        await editor.OpenAsync(rules, Farm.Rules);
        (await editor.EditAsync(rules, "needs no mastitis", "needs no mastits")).ShouldNotBeEmpty();

        var place = new { line = 14, character = 12 };
        var actions = await editor.AskAsync("textDocument/codeAction", new
        {
            textDocument = new { uri = Editor.Uri(rules) }, range = new { start = place, end = place }, context = new { diagnostics = Array.Empty<object>() },
        });
        var action = actions.EnumerateArray().First();
        action.GetProperty("kind").GetString().ShouldBe("quickfix");
        var edit = action.GetProperty("edit").GetProperty("changes").GetProperty(Editor.Uri(rules)).EnumerateArray().Single();
        edit.GetProperty("newText").GetString().ShouldBe("mastitis");
        (await editor.EditAsync(rules, "mastits", "mastitis")).ShouldBe("");
    }

    [Fact]
    public async Task Where_nothing_is_wrong_nothing_is_offered()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var rules = folder.At("rules.byre");
        await editor.OpenAsync(rules, Farm.Rules);
        var place = new { line = 0, character = 0 };
        var actions = await editor.AskAsync("textDocument/codeAction", new
        {
            textDocument = new { uri = Editor.Uri(rules) }, range = new { start = place, end = place }, context = new { diagnostics = Array.Empty<object>(), only = new[] { "refactor" } },
        });
        actions.ValueKind.ShouldBe(JsonValueKind.Array);
        actions.GetArrayLength().ShouldBe(0);
    }
}
