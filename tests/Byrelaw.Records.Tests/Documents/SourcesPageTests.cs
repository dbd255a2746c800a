using Byrelaw.Records.Sources;
using Byrelaw.Records.Suggesting;
using NodaTime;

namespace Byrelaw.Records.Tests.Documents;

/// <summary>The page about a farm's own files shows what its example becomes, and what is wrong in it.</summary>
public sealed class SourcesPageTests
{
    [Fact]
    public void The_example_is_read_as_the_page_says()
    {
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var stated = 0;
        ExecutedPage.Verify("docs/sources.md", fence =>
        {
            switch (fence.Language, fence.Rest)
            {
                case ("csv", "animals as read"):
                    return Shown(Input(files, out _).Animals);
                case ("csv", "events as read"):
                    return Shown(Input(files, out _).Events);
                case ("text", "suggested for cows.csv and diary.csv"):
                    return RecordsSuggester.Suggest("records", files.Where(file => file.Key.EndsWith(".csv", StringComparison.Ordinal)).Select(file => (file.Key, file.Value)), Vocabulary(), new LocalDate(2026, 10, 1));
                case ("problems", _):
                    stated++;
                    return DiagnosticText.Of(Problems(files)).TrimEnd('\n') + "\n";
                default:
                    files[fence.Rest] = Read.Bytes(fence.Text);
                    return null;
            }
        });

        stated.ShouldBe(1);
    }

    private static IEnumerable<Diagnostic> Problems(Dictionary<string, byte[]> files)
    {
        var input = Input(files, out var rules);
        return [.. rules.Problems, .. HerdReading.Read(input, rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd.Problems];
    }

    private static Vocabulary Vocabulary() => RulebookReader.Read("farm.byre", new Folder(new() { ["farm.byre"] = Read.Bytes("use \"vocabulary.byre\"\n") }))!.Rulebook.Vocabulary;

    private static RecordInput Input(Dictionary<string, byte[]> files, out RulebookReading rules)
    {
        rules = RulebookReader.Read("farm.byre", new Folder(files))!;
        return SourceReader.Read(file => files.GetValueOrDefault(file), file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);
    }

    /// <summary>The rows without the columns in which nothing stands that the farm's own files have none of.</summary>
    private static string Shown(RecordFile file)
    {
        using var reader = new StreamReader(file.Open());
        var rows = reader.ReadToEnd().TrimEnd('\n').Split('\n').Select(row => row.Split(',')).ToList();
        int[] dropped = [.. new[] { "note", "recorded", "sample" }.Select(column => Array.IndexOf(rows[0], column)).Where(column => column >= 0)];
        return string.Concat(rows.Select(row => string.Join(',', row.Where((_, column) => !dropped.Contains(column)).Select(cell => Unreadable.Is(cell) ? $"(cannot be read) {Unreadable.Unmarked(cell)}" : cell)) + "\n"));
    }

    private sealed class Folder(Dictionary<string, byte[]> files) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == "vocabulary.byre" ? File.ReadAllBytes(Repository.At("rulesets/vocabulary.byre")) : files.GetValueOrDefault(path);
    }
}
