namespace Byrelaw.Judging.Verdicts;

/// <summary>What stands before every list's rules.</summary>
public enum Gate : byte
{
    /// <summary>None: this is one of the list's rules.</summary>
    None,

    /// <summary>She must be in the herd.</summary>
    InTheHerd,

    /// <summary>She must be female (and a cow or a heifer, where the list is drawn from those).</summary>
    OfTheRightSort,
}

/// <summary>One rule's answer for one animal.</summary>
public sealed record RuleJudgement
{
    /// <summary>The rule's name; for a gate, <c>In the herd</c>, <c>Female</c>, <c>Cow</c> or <c>Heifer</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The rule; null for a gate and for lines that could not be read.</summary>
    public required Rule? Rule { get; init; }

    /// <summary>Whether this is a gate.</summary>
    public Gate Gate { get; init; }

    /// <summary>The answer over the judging days, after waivers and <c>if not known</c>. A rule judged
    /// on the day only has one too, but nothing rests on it.</summary>
    public required RuleAnswer Answer { get; init; }

    /// <summary>The answer rests on days after the known day.</summary>
    public bool Expected { get; init; }

    /// <summary>Met, but at the very limit, or about to lapse: within <see cref="Shaky.Days"/> days of the judging days.</summary>
    public bool IsShaky { get; init; }

    /// <summary>The first day from the first judging day on at which the answer is another; null for none in the span.</summary>
    public LocalDate? ChangesOn { get; init; }

    /// <summary>For a rule that is not met: the first day of the first later stretch on which it holds (see <see cref="AnimalJudgement.ReadyFrom"/>);
    /// null for none in the span: the rule is stuck.</summary>
    public LocalDate? TurnsOn { get; init; }

    /// <summary>A not known that <c>if not known</c> replaced on a judging day; <see cref="IfNotKnown.Ask"/> for none.</summary>
    public IfNotKnown Replaced { get; init; }

    /// <summary>The waiver that makes it true on a judging day; null for none.</summary>
    public Waiver? Waiver { get; init; }

    /// <summary>What each condition found, on the judging day that decides (the first on which the rule
    /// has this answer).</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>For a rule that is not known: sets of records, each of which would settle it where they turn out well; those of fewest records first. Empty where none is told.</summary>
    public ImmutableArray<ImmutableArray<Missing>> Ways { get; init; } = [];

    /// <summary>For a rule that is not met: sets of what would turn it, each enough by itself; those of fewest first. Empty where none is told.</summary>
    public ImmutableArray<ImmutableArray<Remedy>> Remedies { get; init; } = [];

    /// <summary>Where that is not a judging day but the later day that the records reach, on which a safety rule must hold too: that day; else null.</summary>
    public LocalDate? FoundOn { get; init; }

    /// <summary>For a gate: the records it rests on (a sale, a purchase).</summary>
    public ImmutableArray<Evidence> GateEvidence { get; init; } = [];

    /// <summary>For a rule that is not met: nothing that can still happen turns it (a limit is passed that time cannot undo, or a recorded fact says so).</summary>
    public bool ForGood { get; init; }

    /// <summary>The rule over the whole span.</summary>
    public required Timeline Timeline { get; init; }

    /// <summary>Whether it is a rule of the floor, or is proved to ask all that one of them asks.</summary>
    public bool AsksTheFloor { get; init; }

    /// <summary>Whether it stands between her and Ready. A broken rule always does: the line that broke may have been the one
    /// that leaves it to the day.</summary>
    public bool InTheWay => Answer == RuleAnswer.Broken || (Answer is RuleAnswer.NotMet or RuleAnswer.NotKnown && Rule?.OnTheDay != true);
}

/// <summary>When a met rule is shown as shaky.</summary>
public static class Shaky
{
    /// <summary>A rule that lapses this many days after the judging days, or fewer, is shaky. Common practice, no source.</summary>
    public const int Days = 2;
}
