namespace Byrelaw.Reporting.Documents;

/// <summary>Lines to write on.</summary>
/// <param name="Names">What is written on each.</param>
public sealed record Blanks(params ImmutableArray<string> Names) : Drawn
{
    /// <summary>What stands where somebody is to write.</summary>
    public const string Line = "……………";

    /// <summary>A box to tick.</summary>
    public const string Box = "☐";

    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => [new Listing([.. Names.Select<string, Wording>(name => $"{name}: {Line}")], IsNumbered: false)];
}
