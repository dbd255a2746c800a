namespace Byrelaw.Language.Reading;

/// <summary>Reads a file and all it uses, each once.</summary>
internal sealed class FileLoader
{
    private const int MostFiles = 500;

    private readonly WithBaseRules _files;
    private readonly Dictionary<string, RuleFile> _byPath = new(StringComparer.Ordinal);
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);

    private FileLoader(IRuleFiles files) => _files = new WithBaseRules(files);

    /// <summary>All files in the order of reading, the one asked for first.</summary>
    public List<RuleFile> Files { get; } = [];

    /// <summary>The same files, each after those it uses.</summary>
    public List<RuleFile> UsedFirst { get; } = [];

    /// <summary>Used files that could not be read: they may have held rules for any list.</summary>
    public List<BrokenPart> Broken { get; } = [];

    /// <summary>The paths of used files that hold worked examples.</summary>
    public ImmutableArray<string> UsedWithExamples() =>
        [.. _byPath.Where(file => !file.Value.IsRoot && file.Value.Blocks.Any(block => block.Kind == Blocks.BlockKind.Example)).Select(file => file.Key)];

    /// <summary>Loads; null where there is no such file.</summary>
    public static FileLoader? Load(string path, IRuleFiles files)
    {
        var loader = new FileLoader(files);
        return loader.Open(path, isRoot: true) is null ? null : loader;
    }

    // Recursion is bounded: no path is opened twice, and there are at most 500 files.
    private RuleFile? Open(string path, bool isRoot)
    {
        if (_files.Read(path) is not { } bytes)
        {
            return null;
        }

        var file = FileDecoding.Decode(_files.Show(path), bytes, isRoot);
        _byPath[path] = file;
        _open.Add(path);
        Files.Add(file);
        if (file.Problems.Count > 0)
        {
            Broken.Add(new BrokenPart(null, new SourceSpan(file.Source, 0, 0)));
        }

        foreach (var line in file.Lines)
        {
            if (line.WordAt(0) == "use" && line.Tokens is [_, { Kind: TokenKind.Text }])
            {
                Use(path, file, line.Tokens[1]);
            }
            else if (BaseUse.Of(line) is { } used)
            {
                UseBase(file, used);
            }
            else if (isRoot && line.WordAt(0) == "holidays" && line.Tokens is [_, { Kind: TokenKind.Text }])
            {
                Holidays(path, file, line.Tokens[1]);
            }
        }

        _open.Remove(path);
        UsedFirst.Add(file);
        return file;
    }

    private void Holidays(string path, RuleFile file, Token written)
    {
        var target = PathProblem(written.Span, written.Text) is { } ? null : _files.Resolve(path, written.Text);
        file.HolidayLists[written.Text] = target is not null && _files.Read(target) is { Length: <= 200_000 } bytes ? (_files.Show(target), bytes) : null;
    }

    private void Use(string path, RuleFile file, Token written)
    {
        var wrong = PathProblem(written.Span, written.Text);
        Take(file, written.Span, wrong is null ? Find(_files.Resolve(path, written.Text), written.Span) : (null, wrong));
    }

    /// <summary>A file of the program's own, by name and edition; the newest where the line does not say which.</summary>
    private void UseBase(RuleFile file, BaseUse written)
    {
        var editions = BaseEditions.Editions(written.Name);
        var problem = editions.Count == 0 ? BaseProblems.NoSuchFile(written.At, written.Name, BaseEditions.Names(BaseEditions.Newest))
            : written.SaysEdition && (written.Edition is not { } asked || !editions.Contains(asked)) ? BaseProblems.NoSuchEdition(written.EditionAt, written.Name, editions)
            : null;
        if (problem is not null)
        {
            Take(file, written.At, (null, problem));
            return;
        }

        var edition = written.Edition ?? editions[^1];
        if (!written.SaysEdition)
        {
            file.Problems.Add(BaseProblems.NoEdition(written.EditionAt, written.Name, edition));
        }

        Take(file, written.At, Find(BaseEditions.Path(edition, written.Name), written.At));
    }

    private void Take(RuleFile file, SourceSpan at, (RuleFile? Used, Diagnostic? Problem) found)
    {
        if (found.Problem is { } problem)
        {
            file.Problems.Add(problem);
            Broken.Add(new BrokenPart(null, at));
        }

        if (found.Used is { } used)
        {
            file.Uses.Add(used);
            file.Under.Add(used);
            file.Under.UnionWith(used.Under);
        }
    }

    private (RuleFile? Used, Diagnostic? Problem) Find(string target, SourceSpan written)
    {
        if (_open.Contains(target))
        {
            return (null, FileProblems.Circle(written, _files.Show(target)));
        }

        if (_byPath.TryGetValue(target, out var used))
        {
            return (used, null);
        }

        if (_byPath.Count >= MostFiles)
        {
            return (null, FileProblems.TooMany(written, MostFiles));
        }

        used = Open(target, isRoot: false);
        return (used, used is null ? FileProblems.Missing(written, _files.Show(target)) : null);
    }

    /// <summary>What is wrong with a path that a line names; null for nothing.</summary>
    internal static Diagnostic? PathProblem(SourceSpan written, string relative)
    {
        if (relative.Contains('\\', StringComparison.Ordinal))
        {
            return FileProblems.Backslash(written, relative);
        }

        if (relative.Length == 0 || relative[0] == '/' || relative.Contains(':', StringComparison.Ordinal))
        {
            return FileProblems.NotRelative(written);
        }

        return null;
    }
}
