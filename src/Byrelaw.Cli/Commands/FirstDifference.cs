using System.Globalization;

namespace Byrelaw.Cli.Commands;

/// <summary>Shows where a file that is not tidy differs first from its tidied text.</summary>
internal static class FirstDifference
{
    /// <summary>A line that names the place, the line as it is, and the line as it would be.</summary>
    public static string Of(TidyResult result)
    {
        string[] written = Lines(result.Source.Text), tidied = Lines(result.Text!);
        var line = written.Zip(tidied).TakeWhile(pair => pair.First == pair.Second).Count();
        var shown = PlainText.Clean(result.Source.Path);
        return line == written.Length && line == tidied.Length
            ? $"{shown}: not tidy; only in signs that cannot be seen, such as the ends of its lines\n"
            : string.Create(CultureInfo.InvariantCulture, $"{shown}:{line + 1}: not tidy; from here on it would be\n  - {Shown(written, line)}\n  + {Shown(tidied, line)}\n");
    }

    private static string[] Lines(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return lines[^1].Length == 0 ? lines[..^1] : lines;
    }

    /// <summary>Spaces at the end as dots, for nobody sees them otherwise.</summary>
    private static string Shown(string[] lines, int at)
    {
        if (at == lines.Length)
        {
            return "(the end of the file)";
        }

        var line = lines[at].Replace("\t", "    ", StringComparison.Ordinal);
        var words = line.TrimEnd();
        return line.Length == 0 ? "(an empty line)" : string.Join(' ', words.Split(' ').Select(PlainText.Clean)) + new string('·', line.Length - words.Length);
    }
}
