namespace Byrelaw.Judging.Tests.Reference;

/// <summary>All that the reference says of one animal on one list.</summary>
public sealed record JudgedAnimal
{
    public required int Animal { get; init; }

    public required string Number { get; init; }

    /// <summary>What sort of animal she is on the first judging day.</summary>
    public required AnimalSort Sort { get; init; }

    public required AnswerWithDates Answer { get; init; }

    /// <summary>The first and the last judging day.</summary>
    public required (int From, int To) Judged { get; init; }

    /// <summary>First day of the stretch in which the rules hold.</summary>
    public int? ReadyFrom { get; init; }

    /// <summary>Its last day; null where it reaches the span's end.</summary>
    public int? ReadyUntil { get; init; }

    /// <summary>Past the programme's final transfer.</summary>
    public bool TooLate { get; init; }

    public required IReadOnlyList<JudgedRule> Rules { get; init; }

    /// <summary>A(d).</summary>
    public required ByDay<Truth> All { get; init; }

    /// <summary>A(d) were coverage to stop at the known day.</summary>
    public required ByDay<Truth> AllStrict { get; init; }

    /// <summary>"*Take her as in calf* where a rule of the floor is false on a day judged; *May be in calf* where none is false and one is not known": on every list.</summary>
    public InCalf InCalf { get; init; }

    public double Score { get; init; }

    /// <summary>Each preference on the first judging day.</summary>
    public ImmutableArray<(string Name, Truth Truth)> Prefers { get; init; } = [];
}
