namespace Byrelaw.Judging.Verdicts;

/// <summary>All that is said of one animal on one list.</summary>
public sealed record AnimalJudgement
{
    /// <summary>Her place in the herd.</summary>
    public required int Animal { get; init; }

    /// <summary>Her number on the farm.</summary>
    public required string Number { get; init; }

    /// <summary>What sort of animal she is on the first judging day.</summary>
    public required AnimalSort Sort { get; init; }

    /// <summary>The answer.</summary>
    public required Answer Answer { get; init; }

    /// <summary>First day of the stretch in which the rules hold: the one with the judging days, or for Later the first later one, which runs from a
    /// later judging day to the last of them, or over as many days in a row after them; null where there is none.</summary>
    public LocalDate? ReadyFrom { get; init; }

    /// <summary>Last day of that stretch; null where it reaches the span's end.</summary>
    public LocalDate? ReadyUntil { get; init; }

    /// <summary>For Later: whichever of <see cref="ReadyFrom"/> and <see cref="NotBefore"/> comes first is past the programme's last transfer.</summary>
    public bool TooLate { get; init; }

    /// <summary>For Later: the first day of the first later stretch on which no rule fails but some are not known, where that is before she is ready.</summary>
    public LocalDate? NotBefore { get; init; }

    /// <summary>For No: nothing that can still happen changes it.</summary>
    public bool ForGood { get; init; }

    /// <summary>For No: two rules that each hold on some later day, but never together; empty otherwise.</summary>
    public ImmutableArray<string> NeverTogether { get; init; } = [];

    /// <summary>Points of the preferences that are true on the first judging day.</summary>
    public double Score { get; init; }

    /// <summary>Place among the Ready and On course of the list, from 1; null for the others.</summary>
    public int? Rank { get; init; }

    /// <summary>Other lists on which she is Ready or On course too.</summary>
    public ImmutableArray<string> AlsoReadyOn { get; init; } = [];

    /// <summary>Gates, then the list's rules in the order of the files.</summary>
    public required ImmutableArray<RuleJudgement> Rules { get; init; }

    /// <summary>Whether she is to be taken as in calf, whatever the answer and on every list.</summary>
    public InCalf InCalf { get; init; }

    /// <summary>The list's preferences.</summary>
    public ImmutableArray<PreferJudgement> Prefers { get; init; } = [];

    /// <summary>For Ask: the records that would settle it, without doubles.</summary>
    public ImmutableArray<Missing> Settle { get; init; } = [];

    /// <summary>For Ask: what is open, rule by rule, each with the sets of records of which any one would settle it.</summary>
    public ImmutableArray<OpenQuestion> Open { get; init; } = [];

    /// <summary>For a Later with <see cref="NotBefore"/>: the records that are still to be asked for then, without doubles.</summary>
    public ImmutableArray<Missing> ThenAsk { get; init; } = [];

    /// <summary>All rules together over the whole span.</summary>
    public required Timeline Timeline { get; init; }
}

/// <summary>Something that is not known, and by which records it may come to be known.</summary>
/// <param name="Rule">The rule that asks, or the gate.</param>
/// <param name="Ways">Any of them would settle it, where its records turn out well; those of fewest records first. At least one.</param>
public sealed record OpenQuestion(string Rule, ImmutableArray<ImmutableArray<Missing>> Ways);

/// <summary>One preference's answer.</summary>
/// <param name="Prefer">The preference.</param>
/// <param name="Truth">On the first judging day.</param>
/// <param name="Findings">What its conditions found.</param>
public sealed record PreferJudgement(Prefer Prefer, Truth Truth, ImmutableArray<Finding> Findings);
