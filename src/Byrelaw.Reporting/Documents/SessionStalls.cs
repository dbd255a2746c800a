namespace Byrelaw.Reporting.Documents;

/// <summary>One session: its counts, and a stall for each recipient that is wanted, with the number of who is named in it.</summary>
/// <param name="Heading">Which.</param>
/// <param name="Days">Its days, a line each.</param>
/// <param name="Counts">What is counted, each with its name.</param>
/// <param name="Named">Who is named, each with a link to her row.</param>
/// <param name="Empty">How many places nobody has.</param>
/// <param name="Note">What else there is to say.</param>
public sealed record SessionStalls(Wording Heading, ImmutableArray<Wording> Days, ImmutableArray<(string Name, string Count)> Counts, ImmutableArray<Wording> Named, int Empty, Wording Note) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() =>
    [
        new Heading(3, Heading),
        new Sentence(Wording.Join(" · ", Days)),
        new Sentence(Wording.Join(", ", Counts.Select<(string Name, string Count), Wording>(count => $"{Wording.Bold(count.Count)} {count.Name}"))),
        .. Named.IsEmpty && Empty == 0 ? Array.Empty<Element>() : [new Sentence($"Places: {Wording.Join(", ", [.. Named, .. Empty == 0 ? Array.Empty<Wording>() : [$"{Empty} empty"]])}.")],
        .. Note.IsEmpty ? Array.Empty<Element>() : [new Sentence(Note)],
    ];
}
