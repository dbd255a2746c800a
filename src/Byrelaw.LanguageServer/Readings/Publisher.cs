namespace Byrelaw.LanguageServer.Readings;

/// <summary>Tells the client what is wrong in open documents and in the files that they use.</summary>
internal sealed class Publisher(Workspace workspace, MessageWriter writer)
{
    private readonly Dictionary<string, List<EditorProblem>> _told = new(StringComparer.Ordinal);

    /// <summary>Tells what is wrong now. A document that was just edited is always answered; other files where something changed.</summary>
    /// <param name="edited">The paths of documents that were opened or edited.</param>
    /// <param name="second">What the last second look found; of what has been edited since, that which may still be said is.</param>
    public void Publish(IReadOnlySet<string> edited, IReadOnlyList<SecondFindings> second)
    {
        var problems = new Dictionary<string, List<EditorProblem>>(StringComparer.Ordinal);
        foreach (var root in workspace.Files.Open.Keys.ToList())
        {
            if (workspace.Reading(root) is not { } reading)
            {
                continue;
            }

            foreach (var (path, found) in EditorProblems.Of(reading))
            {
                Add(path, found.Select(one => one.Problem));
            }

            foreach (var findings in second.Where(findings => findings.Root == root))
            {
                foreach (var path in findings.Paths)
                {
                    Add(path, reading.FileAt(path) is { } file ? findings.In(path, file.Text) : []);
                }
            }
        }

        // What is wrong in a file of the program's own comes of the farm's words, and is told where these stand; no editor can open it.
        foreach (var path in problems.Keys.Concat(_told.Keys).Where(path => !BaseEditions.IsPath(path)).ToHashSet())
        {
            var now = problems.GetValueOrDefault(path, []);
            if (edited.Contains(path) || !now.SequenceEqual(_told.GetValueOrDefault(path, [])))
            {
                Tell(path, now);
            }
        }

        void Add(string path, IEnumerable<EditorProblem> found)
        {
            problems.TryAdd(path, []);
            problems[path].AddRange(found.Except(problems[path]));
        }
    }

    private void Tell(string path, List<EditorProblem> problems)
    {
        var version = workspace.Files.Open.TryGetValue(path, out var document) ? document.Version : null;
        writer.Notify("textDocument/publishDiagnostics", new PublishParams(workspace.Files.Uri(path), version, problems), LspJson.Default.PublishParams);
        if (problems.Count == 0)
        {
            _told.Remove(path);
        }
        else
        {
            _told[path] = problems;
        }
    }
}
