namespace Byrelaw.Reporting.Documents;

/// <summary>The heading of an animal's page: her number as large as it goes, her answer and her danger beside it.</summary>
/// <param name="Number">Her number.</param>
/// <param name="Answer">Her answer, with what the floor says of her.</param>
/// <param name="Who">What tells her from the others.</param>
public sealed record AnimalHeading(string Number, Wording Answer, string Who) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => [new Heading(1, $"{Wording.Bold(Number)} · {Answer}"), new Sentence(Who)];
}
