using Byrelaw.Language.Binding.Farm;

namespace Byrelaw.Language.Layers;

/// <summary>
/// Changes of what is expected of the records. Each adds: what was expected is tried as before, and what the change expects is tried besides, so
/// that no text makes a promise easier to keep.
/// </summary>
internal sealed class ExpectationChanges(IReadOnlyList<RecordExpectation> expectations, LocalDate? knownOn)
{
    private readonly List<RecordExpectation> _added = [];

    /// <summary>What is expected, with what changes expect besides.</summary>
    public IEnumerable<RecordExpectation> All => expectations.Concat(_added);

    /// <summary>The expectation of that name; null where there is none.</summary>
    public RecordExpectation? Find(string name) => expectations.FirstOrDefault(other => NameFolding.Fold(other.Name) == NameFolding.Fold(name));

    /// <summary>The one whose name is nearest to a misspelt one, and where it stands; null where none is near.</summary>
    public (string Name, SourceSpan Span)? Nearest(string name) =>
        NearestName.To(name, expectations.Select(other => other.Name)) is { } near ? (near, Find(near)!.Span) : null;

    /// <summary>Adds a change; one that is not agreed to, or asks no more than was asked, is broken, and then the promises that it is about do not count.</summary>
    public void Add(Context context, RuleFile file, Block block, Stated stated, RecordExpectation before, bool isAgreed)
    {
        if (knownOn is { } day && stated.Agreement is { } agreement && agreement.On > day)
        {
            return;
        }

        var count = context.Problems.Count;
        TellLines(context, file, block, before);
        var here = RecordExpectationBinder.Changed(context, block, before, stated);
        if (context.Problems.Count == count && !here.IsBroken && AsksNoMore(before, here))
        {
            context.Problems.Add(ExpectationProblems.AsksNoMore(block.Span, before.Name, ExpectationText.Expected(before), before.Span));
        }

        _added.Add(isAgreed && context.Problems.Count == count ? here : here with { IsBroken = true });
    }

    private static void TellLines(Context context, RuleFile file, Block block, RecordExpectation before)
    {
        var foreign = block.Lines.FindAll(line => line is not (EveryComesLine or RateLine or ElseLine or BecauseLine or SourceLine or AgreedByLine));
        foreign.ForEach(line => context.Problems.Add(ExpectationProblems.LineOfARule(line.Span, before.Name)));
        if (!block.IsBroken && foreign.Count == 0 && !block.Lines.Exists(line => line is EveryComesLine or RateLine or ElseLine))
        {
            context.Problems.Add(LayerProblems.ChangesNothing(block.Span));
        }

        if (!file.Under.Append(file).Any(seen => seen.Source == before.Span.File))
        {
            context.Problems.Add(LayerProblems.NotUnderThisFile(block.Span, before.Name, before.Span));
        }
    }

    /// <summary>Whether whatever fails the one fails the other: the same entries looked at, within days at least as many, with no more failing and the same promises.</summary>
    private static bool AsksNoMore(RecordExpectation before, RecordExpectation here) =>
        here.Else.All(before.Else.Contains) && (before, here) switch
        {
            (EntryExpectation was, EntryExpectation now) =>
                was.Every == now.Every && was.IsBefore == now.IsBefore && was.ForHer == now.ForHer && now.OverPercent >= was.OverPercent
                && IsNoLonger(now.From, was.From) && IsNoLonger(was.To, now.To)
                && was.Others.All(now.Others.Contains) && was.Spells.All(now.Spells.Contains),
            (RateExpectation was, RateExpectation now) => was.Kind == now.Kind && now.Count / now.Cows <= was.Count / was.Cows,
            _ => false,
        };

    private static bool IsNoLonger(TimeLength one, TimeLength other) => one == other || CountBinding.IsAbove(other, one);
}
