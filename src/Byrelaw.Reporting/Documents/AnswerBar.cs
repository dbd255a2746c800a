namespace Byrelaw.Reporting.Documents;

/// <summary>How many animals have which answer.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Use">What the list is for: it names the answer.</param>
/// <param name="Count">How many.</param>
/// <param name="Target">The section they stand in; null for none.</param>
public readonly record struct AnswerShare(Answer Answer, ListUse Use, int Count, string? Target);

/// <summary>All answers of a list as one bar.</summary>
/// <param name="Shares">Best answer first; an answer that nobody has among them.</param>
public sealed record AnswerBar(params ImmutableArray<AnswerShare> Shares) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() =>
        [new Sentence($"{Numbers.Count(Shares.Sum(share => share.Count), "animal", "animals")} judged: {Wording.Join(" · ", Shares.Select<AnswerShare, Wording>(share => $"{Wording.Bold($"{share.Count}")} {AnswerWords.Both(share.Answer, share.Use)}"))}")];
}
