namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>
/// Several results together: <c>average cell count of the last 3 results less than 200 kcells/mL</c>, <c>every BVD virus in the last 90 days is negative</c>. Two good ones are not three, and all
/// of none is not every: then it is not known.
/// </summary>
/// <param name="How">The average, lowest or highest of the last ones, or every one.</param>
/// <param name="Of">A measure or a test.</param>
/// <param name="Results">On how many latest days with a sample; 0 for all of the windows.</param>
/// <param name="Windows">None, one or two.</param>
public sealed record SeriesCondition(Aggregate How, Kind Of, int Results, ImmutableArray<Window> Windows) : Condition(Windows)
{
    /// <summary>Of a measure: the demand, in its declared unit; null for a test.</summary>
    public NumberTest? Test { get; init; }

    /// <summary>Of a test: places in <see cref="TestKind.Answers"/>.</summary>
    public ImmutableArray<int> Answers { get; init; } = [];

    /// <summary>Of a test: true for <c>is not</c>.</summary>
    public bool IsNot { get; init; }

    /// <inheritdoc />
    public override string Subject => $"{How.Words()} {Of.Name}{OfTheLast}";

    /// <summary><c> of the last 3 results</c>; empty for all.</summary>
    public string OfTheLast => Results == 0 ? "" : $" of the last {Results} results";

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        if (Of is MeasureKind measure)
        {
            return others.Measure(measure) is { } found && others.Value(Test!, measure, found, false) is { } test ? this with { Of = found, Test = test } : null;
        }

        if (others.Kind(Of) is not TestKind other)
        {
            return null;
        }

        var answers = Answers.Select(answer => OtherParts.Answer((TestKind)Of, answer, other)).ToList();
        return answers.Contains(null) ? null : this with { Of = other, Answers = [.. answers.OfType<int>()] };
    }
}
