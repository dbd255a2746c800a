using Byrelaw.Testing.Documents;

namespace Byrelaw.LanguageServer.Tests.Colours;

/// <summary>The pieces of rule files on a page of the documentation, read with the page's own words and file pieces.</summary>
internal static class PageSnippets
{
    private const string Words = "words.byre";

    /// <summary>Each piece, with the line of the page on which it starts; what is shown as people type it is not in the one form that is coloured.</summary>
    public static IEnumerable<(int Line, RulebookView View)> Of(string page)
    {
        var files = new EditorFiles();
        var words = "";
        foreach (var fence in MarkdownPage.Fences(page).Where(fence => fence is { Language: "byre", Rest: not "conditions typed" }))
        {
            var rest = fence.Rest.Split(' ');
            var text = rest[0] == "conditions" ? string.Concat(fence.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => $"rule \"x\"\n  needs {line}\n")) : fence.Text;
            var path = rest[0] == "words" ? Words : rest is ["file", var name] ? name : "snippet.byre";
            words = rest[0] == "words" ? text : words;
            Open(files, path, rest[0] is "words" or "file" or "" || words.Length == 0 ? text : text + $"use \"{Words}\"\n");
            yield return (fence.Line, new RulebookView(RulebookReader.Read(path, files)!));
        }
    }

    private static void Open(EditorFiles files, string path, string text)
    {
        files.Folders.Clear();
        files.Folders.Add(Path.GetPathRoot(Path.GetTempPath())!);
        files.Open[path] = files.Open[files.Resolve("snippet.byre", path)] = new OpenDocument(path, 1, text);
    }
}
