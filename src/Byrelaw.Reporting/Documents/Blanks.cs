namespace Byrelaw.Reporting.Documents;

/// <summary>Lines to write on.</summary>
/// <param name="Names">What is written on each.</param>
public sealed record Blanks(params ImmutableArray<string> Names) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => [new Listing([.. Names.Select<string, Wording>(name => $"{name}: ……………")], IsNumbered: false)];
}
