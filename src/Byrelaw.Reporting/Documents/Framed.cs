namespace Byrelaw.Reporting.Documents;

/// <summary>What a frame is for.</summary>
public enum Frame
{
    /// <summary>Whom not to touch.</summary>
    Danger,

    /// <summary>A stop of everything.</summary>
    Stop,

    /// <summary>What to do.</summary>
    Job,
}

/// <summary>Sentences that nobody is to read past.</summary>
/// <param name="Frame">What for.</param>
/// <param name="Sentences">In order; at least one.</param>
public sealed record Framed(Frame Frame, params ImmutableArray<Wording> Sentences) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => Sentences.Select(words => new Sentence(words));
}
