namespace Byrelaw.Reporting.Documents;

/// <summary>What is folded away on a screen until somebody asks; on paper it stands open.</summary>
/// <param name="Summary">What it is.</param>
/// <param name="Blocks">What is in it.</param>
/// <param name="OnScreenOnly">Whether paper leaves it out.</param>
public sealed record Folded(Wording Summary, ImmutableArray<Element> Blocks, bool OnScreenOnly = false) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => [new Sentence(Summary), .. Blocks];
}
