namespace Byrelaw.Workshop.Tidying;

/// <summary>What came of tidying one file.</summary>
/// <param name="Source">The file as it stands.</param>
/// <param name="Text">The tidied text; null where the file is left alone.</param>
public sealed record TidyResult(SourceFile Source, string? Text)
{
    /// <summary>Whether the file's bytes are the tidied text's already.</summary>
    public bool IsTidy { get; init; }

    /// <summary>What has to be mended first; none where the text was tidied.</summary>
    public ImmutableArray<Diagnostic> Errors { get; init; } = [];

    /// <summary>What the tidied text would have changed, in words: a mistake in this program, for which the file is left alone. Else null.</summary>
    public string? WouldChange { get; init; }
}
