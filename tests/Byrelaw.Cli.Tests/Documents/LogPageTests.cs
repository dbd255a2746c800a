using System.Text.RegularExpressions;

namespace Byrelaw.Cli.Tests.Documents;

/// <summary>
/// The page about the log is run from its first line to its last in a copy of the examples: <c>text</c> and <c>problems</c> run a command,
/// <c>jsonl FILE LINE</c> shows a line, <c>edit FILE</c> replaces its first line of text by its second.
/// </summary>
public sealed partial class LogPageTests : IDisposable
{
    private readonly CopiedExamples _examples = new();

    public void Dispose() => _examples.Dispose();

    [Fact]
    public void What_the_page_shows_is_what_the_program_prints()
    {
        var shown = 0;
        ExecutedPage.Verify("docs/log.md", fence =>
        {
            var words = Words().Matches(fence.Rest).Select(word => word.Value.Trim('"')).ToArray();
            shown += words.Length == 0 ? 0 : 1;
            return words.Length == 0 ? null : fence.Language switch
            {
                "text" => Said(_examples.Run(words).Out),
                "problems" => Said(_examples.Run(words).Err),
                "jsonl" => Said(File.ReadLines(_examples.At(words[0])).ElementAt(int.Parse(words[1], CultureInfo.InvariantCulture) - 1)),
                _ => Edited(_examples.At(words[0]), fence.Text.Split('\n')),
            };
        });

        shown.ShouldBe(9);
    }

    private static string? Edited(string file, string[] lines)
    {
        var text = File.ReadAllText(file);
        text.ShouldContain(lines[0]);
        File.WriteAllText(file, text.Replace(lines[0], lines[1], StringComparison.Ordinal));
        return null;
    }

    private static string Said(string text) => Without.Digests(text.TrimEnd('\n') + "\n");

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Words();
}
