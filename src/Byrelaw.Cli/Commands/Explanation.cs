namespace Byrelaw.Cli.Commands;

/// <summary>What <c>byrelaw check --explain CODE</c> prints: the page of one problem.</summary>
internal static class Explanation
{
    private const string Fence = "```";
    private const string OfAFile = "file ";

    /// <summary>Prints it; where there is no such code, names the nearest.</summary>
    public static int Print(string code, Doors doors)
    {
        if (ProblemCatalogue.Find(code) is { } page)
        {
            doors.Out.WriteLine($"{page.Code}: {page.Title}\n");
            doors.Out.Write(Plain(page.Text));
            return ExitCode.Done;
        }

        var nearest = ProblemCatalogue.Nearest(code) is { } near ? $"; did you mean {near}?" : "";
        doors.Err.WriteLine($"byrelaw: no problem has the code {PlainText.Clean(code)}{nearest}");
        return ExitCode.CouldNot;
    }

    /// <summary>The page without the marks of its examples, which are indented instead; where one has several files, each under its name.</summary>
    private static string Plain(string text)
    {
        var lines = new List<string>();
        var inside = false;
        foreach (var line in text.TrimEnd('\n').Split('\n'))
        {
            if (!line.StartsWith(Fence, StringComparison.Ordinal))
            {
                lines.Add(inside && line.Length > 0 ? "    " + line : line);
                continue;
            }

            var at = line.IndexOf(OfAFile, StringComparison.Ordinal);
            if (at > 0)
            {
                lines.Add($"{line[(at + OfAFile.Length)..]}:\n");
            }

            inside = !inside;
        }

        return string.Concat(lines.Select(line => line + "\n"));
    }
}
