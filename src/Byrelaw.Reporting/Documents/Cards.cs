namespace Byrelaw.Reporting.Documents;

/// <summary>A few facts of one thing, each with its name: an animal's answers at one session.</summary>
/// <param name="Heading">Whose they are.</param>
/// <param name="Facts">In order.</param>
public sealed record Card(Wording Heading, ImmutableArray<(string Name, Wording Says)> Facts);

/// <summary>Cards side by side.</summary>
/// <param name="Heading">What they are, for those who hear the page.</param>
/// <param name="All">In order.</param>
public sealed record Cards(string Heading, ImmutableArray<Card> All) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() =>
        [new Heading(2, Heading), new Listing([.. All.SelectMany(card => card.Facts.Select<(string Name, Wording Says), Wording>(fact => $"{card.Heading} · {fact.Name}: {fact.Says}"))], IsNumbered: false)];
}
