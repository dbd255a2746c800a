namespace Byrelaw.LanguageServer.Readings;

/// <summary>What a second look at one document found in it and in the files that it uses.</summary>
internal sealed class SecondFindings
{
    private readonly Dictionary<string, (string Text, List<EditorProblem> Problems)> _byPath;

    private SecondFindings(string root, Dictionary<string, (string Text, List<EditorProblem> Problems)> byPath)
    {
        Root = root;
        _byPath = byPath;
    }

    /// <summary>The document's path.</summary>
    public string Root { get; }

    /// <summary>The files in which something was found.</summary>
    public IEnumerable<string> Paths => _byPath.Keys;

    /// <summary>Takes what was found in a reading.</summary>
    public static SecondFindings Of(RootReading reading, IEnumerable<Diagnostic> found)
    {
        var byPath = new Dictionary<string, (string, List<EditorProblem>)>(StringComparer.Ordinal);
        foreach (var (path, problems) in EditorProblems.Of(reading, found).Where(file => file.Value.Count > 0))
        {
            byPath[path] = (reading.FileAt(path)!.Text, problems.ConvertAll(one => one.Problem));
        }

        return new SecondFindings(reading.Path, byPath);
    }

    /// <summary>
    /// What may still be said of a file that has been edited since. Until the next look is done, findings above and below the
    /// lines that changed stay, so that they do not come and go with every letter; those on lines that changed are dropped,
    /// since the change may be their mend.
    /// </summary>
    /// <param name="path">One of <see cref="Paths"/>.</param>
    /// <param name="text">What the file says now.</param>
    public IEnumerable<EditorProblem> In(string path, string text)
    {
        var (then, problems) = _byPath[path];
        return then == text ? problems : Moved(problems, new ChangedLines(then, text));
    }

    private static IEnumerable<EditorProblem> Moved(List<EditorProblem> problems, ChangedLines changed)
    {
        foreach (var problem in problems)
        {
            if (changed.Moves(problem.Range) is { } range)
            {
                yield return problem with { Range = range };
            }
        }
    }
}
