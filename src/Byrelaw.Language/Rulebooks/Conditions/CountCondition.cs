namespace Byrelaw.Language.Rulebooks.Conditions;

/// <summary>How often something happened: <c>no mastitis or metritis in the last 30 days</c>.</summary>
/// <param name="Test">The demand.</param>
/// <param name="Counted">What counts; each kind (or answer) once a day.</param>
/// <param name="Windows">One or two; both must hold.</param>
public sealed record CountCondition(CountTest Test, ImmutableArray<Counted> Counted, ImmutableArray<Window> Windows) : Condition(Windows)
{
    /// <inheritdoc />
    public override string Subject => string.Join(" or ", Counted.Select(counted => counted.Subject));

    /// <inheritdoc />
    public override Demand? Demand => Test;

    /// <inheritdoc />
    protected override Condition? Make(OtherParts others)
    {
        var test = others.Count(Test);
        return OtherParts.All(Counted, (one, _) => one.With(others)) is { } counted ? this with { Test = test, Counted = counted } : null;
    }
}

/// <summary>What a count counts: an event, or one answer of a test.</summary>
/// <param name="Kind">An event, or a test with <paramref name="Answer"/>.</param>
/// <param name="Answer">The place of the answer in <see cref="TestKind.Answers"/>; -1 for an event.</param>
public sealed record Counted(Kind Kind, int Answer = -1)
{
    /// <summary><c>heat</c>, <c>positive BVD virus</c>.</summary>
    public string Subject => Kind is TestKind test && Answer >= 0 ? $"{test.Answers[Answer]} {test.Name}" : Kind.Name;

    /// <summary>An event can stand only for an event, an answer only for an answer of the same name.</summary>
    internal Counted? With(OtherParts others)
    {
        var found = others.Kind(Kind);
        if (Kind is not TestKind test || Answer < 0)
        {
            return found is null or TestKind ? null : ReferenceEquals(found, Kind) ? this : this with { Kind = found };
        }

        return found is TestKind other && OtherParts.Answer(test, Answer, other) is { } answer
            ? ReferenceEquals(found, Kind) ? this : new Counted(other, answer)
            : null;
    }
}
