namespace Byrelaw.Workshop.Correcting;

/// <summary>A reading on which changes are tried: its parts, and how to read it again.</summary>
internal sealed record RereadParts(ReadParts Parts, ReadAsked Asked)
{
    public IReadOnlyList<RuleFile> Read => Parts.Files;

    public PhraseBook Phrases => Parts.Phrases;

    public Namespace Names => Parts.Names;

    /// <summary>The statement in which a problem stands; null where there is none.</summary>
    public TypedStatement? StatementAt(Diagnostic problem)
    {
        if (FileOf(problem) is not { } file)
        {
            return null;
        }

        var offset = file.Source.StartOf(problem.Line) + problem.Column - 1;
        var line = file.Lines.FirstOrDefault(line => line.Span.Start <= offset && offset <= line.Span.End);
        return line is null ? null : new TypedStatement(file, line, offset, problem.Length);
    }

    /// <summary>The lines (from 1) of the statements that a stretch of text touches.</summary>
    public (int First, int Last) LinesOf(SourceSpan at)
    {
        var touched = Read.First(file => file.Source == at.File).Lines
            .Select(line => line.Span).Where(line => line.Start <= at.End && line.End >= at.Start).ToList();
        var last = at.File.LineAt(at.End);
        return touched.Count == 0 ? (at.Line, last) : (Math.Min(at.Line, touched[0].Line), Math.Max(last, at.File.LineAt(touched[^1].End)));
    }

    /// <summary>The file that a problem stands in; null for a file that could not be read.</summary>
    public RuleFile? FileOf(Diagnostic problem) => Read.FirstOrDefault(file => file.Source.Path == problem.File);
}
