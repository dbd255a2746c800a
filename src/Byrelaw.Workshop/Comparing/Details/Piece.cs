namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>A piece of a condition that can differ by itself.</summary>
internal readonly record struct Piece(Aspect Aspect, string Text)
{
    /// <summary>What the condition is about, which must be the same for the rest to be compared, then its pieces; nothing for one that has none.</summary>
    public static IReadOnlyList<Piece> Of(Condition condition, ConditionText text) => condition switch
    {
        CountCondition count =>
            [About("count"), new(Aspect.Counted, text.Counted(count)), new(Aspect.Number, ConditionText.How(count.Test)), Windows(count.Windows, text)],
        ApartCondition apart =>
        [
            About("apart"), new(Aspect.Counted, text.Counted(apart)), new(Aspect.Number, $"at least {NumberText.Of(apart.Days)}"),
            new(Aspect.Sample, $"{DemandText.Of(apart.Apart)} apart"), Windows(apart.Windows, text),
        ],
        TimeSinceCondition since =>
            [About("time since"), new(Aspect.Counted, WindowText.Kinds(since.Kinds, text.Name)), new(Aspect.Number, DemandText.Of(since.Test))],
        AgeCondition age => [About("age"), new(Aspect.Number, DemandText.Of(age.Test))],
        ParityCondition parity => [About("parity"), new(Aspect.Number, DemandText.Of(parity.Test))],
        FactNumberCondition fact => [About($"fact {text.Name(fact.Fact.Name)}"), new(Aspect.Number, DemandText.Of(fact.Test, fact.Fact.Unit, text.Name))],
        FactTextCondition fact => [About($"fact {text.Name(fact.Fact.Name)}"), new(Aspect.Values, text.Is(fact.IsNot, [.. fact.Values]))],
        MeasuredCondition measured =>
        [
            About($"{measured.Aggregate} {text.Name(measured.Measure.Name)}"),
            Windows(measured.Windows, text), new(Aspect.Number, DemandText.Of(measured.Test, measured.Measure.Unit, text.Name)),
        ],
        TestCondition test =>
        [
            About($"test {text.Name(test.Test.Name)}"),
            Windows(test.Windows, text), new(Aspect.Values, text.Is(test.IsNot, [.. test.Answers.Select(answer => test.Test.Answers[answer])])),
        ],
        SeriesCondition series =>
        [
            About($"{series.How} {text.Name(series.Of.Name)}"), Windows(series.Windows, text), new(Aspect.Sample, series.OfTheLast),
            series is { Test: { } test, Of: MeasureKind measure } ? new(Aspect.Number, DemandText.Of(test, measure.Unit, text.Name))
                : new(Aspect.Values, text.Is(series.IsNot, [.. series.Answers.Select(answer => ((TestKind)series.Of).Answers[answer])])),
        ],
        MobMeasuredCondition mob =>
        [
            About($"mob {mob.Aggregate} {text.Name(mob.Measure.Name)}"), Windows(mob.Windows, text),
            new(Aspect.Sample, ConditionText.From(mob.FromAtLeast)), new(Aspect.Number, DemandText.Of(mob.Test, mob.Measure.Unit, text.Name)),
        ],
        MobCountCondition mob =>
        [
            About($"mob count {text.Name(mob.Measure.Name)}"), new(Aspect.Counted, DemandText.Of(mob.Count)), Windows(mob.Windows, text),
            new(Aspect.Sample, ConditionText.From(mob.FromAtLeast)), new(Aspect.Number, DemandText.Of(mob.Test, mob.Measure.Unit, text.Name)),
        ],
        SpellCondition spell => [About($"{spell.Not} {text.Name(spell.Spell.Name)}"), Windows(spell.Windows, text)],
        InMobCondition mob => [About($"mob {mob.IsNot}"), new(Aspect.Values, string.Join(" or ", mob.Mobs.Select(text.Name)))],
        StandingCondition standing =>
        [
            About($"{standing.Not} {text.Name(standing.Fact.Name)}"),
            new(Aspect.Number, $"top {NumberText.Of(standing.Percent)}%"), new(Aspect.Counted, ConditionText.Of(standing)),
        ],
        _ => [],
    };

    private static Piece About(string what) => new(Aspect.Demand, what);

    private static Piece Windows(ImmutableArray<Window> windows, ConditionText text) =>
        new(Aspect.Window, windows.IsEmpty ? "of any age" : WindowText.Of(windows, text.Name).TrimStart());
}
