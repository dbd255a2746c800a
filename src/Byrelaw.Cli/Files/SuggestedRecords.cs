using Byrelaw.Language.BaseRules;
using Byrelaw.Language.Rulebooks.RecordSources;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Records.Suggesting;

namespace Byrelaw.Cli.Files;

/// <summary>The <c>records</c> block that the program suggests for the files of a folder.</summary>
internal static class SuggestedRecords
{
    private const string Alone = "suggestion.byre";

    /// <summary>The block, tidied where it can be read.</summary>
    /// <param name="folder">On disk.</param>
    /// <param name="named">As the <c>records</c> line names it.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="today">What day it is.</param>
    /// <param name="said">What a programme says already of the files.</param>
    /// <param name="unread">Takes the files that cannot be read, and why.</param>
    public static string Of(string folder, string named, Vocabulary vocabulary, LocalDate today, IReadOnlyList<RecordSource>? said = null, ICollection<(string File, string Why)>? unread = null)
    {
        var text = RecordsSuggester.Suggest(named, FilesIn(folder).Select(path => (Relative(folder, path), RegularFile.Read(path)!)), vocabulary, today, said, unread);
        return string.Concat(Tidied(text).Select(Shown));
    }

    /// <summary>A sign of a farm's file as a terminal may show it.</summary>
    private static char Shown(char sign) => (char.IsControl(sign) && sign != '\n') || PlainText.TurnsDirection(sign) ? '\uFFFD' : sign;

    /// <summary>The farm's files in a folder and those below it; hidden ones are none of hers.</summary>
    public static IEnumerable<string> FilesIn(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(path => !Relative(folder, path).Split('/').Any(part => part.StartsWith('.'))).Order(StringComparer.Ordinal);

    /// <summary>A file's name within a folder, with forward slashes.</summary>
    public static string Relative(string folder, string path) => Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');

    /// <summary>As <c>tidy</c> prints it; as it is where a line of it still lacks something.</summary>
    private static string Tidied(string text)
    {
        var head = $"use base vocabulary edition {BaseEditions.Newest}\n\n";
        var tidied = Tidier.Tidy(Alone, new OneFile(Alone, head + text))?.Text;
        return tidied is not null && tidied.StartsWith(head, StringComparison.Ordinal) ? tidied[head.Length..] : text;
    }

    /// <summary>A file that is on no disk.</summary>
    private sealed class OneFile(string name, string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => path == name ? Encoding.UTF8.GetBytes(text) : null;
    }
}
