namespace Byrelaw.Workshop.Comparing;

/// <summary>What became of one thing between two rulebooks.</summary>
public enum Happened
{
    /// <summary>Only the new one has it.</summary>
    Added,

    /// <summary>Only the old one has it.</summary>
    Gone,

    /// <summary>Both have it, and it differs.</summary>
    Changed,
}

/// <summary>How sure it is that two things are one.</summary>
public enum Sameness
{
    /// <summary>They have the same name.</summary>
    SameName,

    /// <summary>Another name, the same list and the same demand in every word: surely one that was renamed.</summary>
    SameMeaning,

    /// <summary>Another name, the same list and a demand that differs in its numbers only: probably one that was renamed.</summary>
    LikeMeaning,
}

/// <summary>One difference between two rulebooks: of a word, a define, a rule, a waiver ...</summary>
public abstract record Difference
{
    /// <summary>Its name in the old rulebook; null where that has none.</summary>
    public required string? OldName { get; init; }

    /// <summary>Its name in the new one; null where that has none.</summary>
    public required string? NewName { get; init; }

    /// <summary>How sure it is that the two are one.</summary>
    public Sameness Sameness { get; init; }

    /// <summary>What differs, where both have it.</summary>
    public ImmutableArray<Detail> Details { get; init; } = [];

    /// <summary>The name it goes by: the new one, where there is one.</summary>
    public string Name => NewName ?? OldName ?? "";

    /// <summary>What became of it.</summary>
    public Happened Happened => OldName is null ? Happened.Added : NewName is null ? Happened.Gone : Happened.Changed;

    /// <summary>Whether it has another name now.</summary>
    public bool IsRenamed => Sameness != Sameness.SameName;

    /// <summary>Whether it can change what is answered of an animal.</summary>
    public virtual bool MayChangeAnswers => Happened != Happened.Changed || Details.Any(detail => detail.MayChangeAnswers);
}

/// <summary>Of a word: an event, a measure, a test, a fact or a spell.</summary>
/// <param name="Old">Its declaration in the old rulebook, one line; null for none.</param>
/// <param name="New">In the new one.</param>
public sealed record WordDifference(string? Old, string? New) : Difference;

/// <summary>Of a defined condition.</summary>
/// <param name="Old">As it was; null for none.</param>
/// <param name="New">As it is; null for none.</param>
/// <param name="Touches">The rules of either rulebook that speak of it, by the name they go by.</param>
public sealed record DefineDifference(Define? Old, Define? New, ImmutableArray<string> Touches) : Difference
{
    /// <inheritdoc/>
    public override bool MayChangeAnswers => Touches.Length > 0 && base.MayChangeAnswers;
}

/// <summary>Of a rule.</summary>
/// <param name="Old">In force in the old rulebook; null for none.</param>
/// <param name="New">In force in the new one; null for none.</param>
/// <param name="OldDrop">The old rulebook set it aside.</param>
/// <param name="NewDrop">The new one does.</param>
public sealed record RuleDifference(Rule? Old, Rule? New, Drop? OldDrop, Drop? NewDrop) : Difference
{
    /// <summary>The rule as the new rulebook has it, else as the old one had it; a dropped one in its last version.</summary>
    public Rule Rule => New ?? NewDrop?.Rule ?? Old ?? OldDrop!.Rule;

    /// <inheritdoc/>
    public override bool MayChangeAnswers => (Old is null) != (New is null) || (Old is not null && Details.Any(detail => detail.MayChangeAnswers));
}

/// <summary>Of a preference.</summary>
public sealed record PreferDifference(Prefer? Old, Prefer? New) : Difference;

/// <summary>Of a waiver; it goes by its rule.</summary>
/// <param name="Old">As it was; null for none.</param>
/// <param name="New">As it is; null for none.</param>
public sealed record WaiverDifference(Waiver? Old, Waiver? New) : Difference
{
    /// <summary>Whom it is for.</summary>
    public string Animal => (New ?? Old)!.Animal;

    /// <inheritdoc/>
    public override bool MayChangeAnswers => true;
}

/// <summary>Of what the farm says about its records.</summary>
public sealed record RecordsDifference : Difference;

/// <summary>Of the programme: its name, its dates and its lists.</summary>
public sealed record ProgrammeDifference : Difference;

/// <summary>Of lines that could not be read and may have been rules.</summary>
public sealed record UnreadDifference : Difference;

/// <summary>Of what else the canonical text says: what a plan is made from.</summary>
public sealed record PlanDifference : Difference
{
    /// <inheritdoc/>
    public override bool MayChangeAnswers => false;
}
