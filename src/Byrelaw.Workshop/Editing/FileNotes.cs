namespace Byrelaw.Workshop.Editing;

/// <summary>One file as the grammar saw it, with what its names mean.</summary>
/// <param name="File">Which.</param>
/// <param name="Lines">Its lines in order; a line in which a token is bad is not among them.</param>
internal sealed record FileNotes(RuleFile File, IReadOnlyList<(NotedLine Noted, IReadOnlyList<NameUse> Names)> Lines)
{
    /// <summary>Reads a file once more, and notes how.</summary>
    public static FileNotes Of(RuleFile file, PhraseBook phrases, Namespace names)
    {
        var notes = new GrammarNotes();
        BlockReader.Read(file.Lines, phrases, [], notes);
        return new FileNotes(file, [.. notes.Lines.Select(line => (line, LineNames.In(line, names)))]);
    }
}
