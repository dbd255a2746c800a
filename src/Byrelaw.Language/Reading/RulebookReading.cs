namespace Byrelaw.Language.Reading;

/// <summary>What came of reading rule files.</summary>
/// <param name="Rulebook">Always there; what could not be read is marked broken in it.</param>
/// <param name="Problems">By file in the order of reading, then by place.</param>
public sealed record RulebookReading(Rulebook Rulebook, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>Used files that hold worked examples, by the paths that <see cref="IRuleFiles.Read"/> takes: read by itself, each says whether
    /// its examples still hold.</summary>
    public ImmutableArray<string> UsedWithExamples { get; init; } = [];

    /// <summary>Whether any problem is an error.</summary>
    public bool HasErrors => Problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>What it was made from.</summary>
    internal ReadParts? Parts { get; init; }

    /// <summary>How it was asked for.</summary>
    internal ReadAsked? Asked { get; init; }
}
