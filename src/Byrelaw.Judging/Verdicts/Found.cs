namespace Byrelaw.Judging.Verdicts;

/// <summary>What a condition found, in numbers and names; reporting puts it into words.</summary>
public abstract record Found;

/// <summary>Nothing on record that would answer.</summary>
public sealed record FoundNothing : Found;

/// <summary>A count.</summary>
/// <param name="AtLeast">How many are on record.</param>
/// <param name="AtMost">How many there can be at most; null where no limit can be given.</param>
public sealed record FoundCount(int AtLeast, int? AtMost) : Found;

/// <summary>Time since an event.</summary>
/// <param name="Last">When it last happened.</param>
/// <param name="Elapsed">Whole units of the limit's unit between then and the judging day.</param>
public sealed record FoundSince(LocalDate Last, TimeLength Elapsed) : Found;

/// <summary>It never happened, and the records cover that.</summary>
public sealed record FoundNever : Found;

/// <summary>Her age in whole units of the limit's unit; the two differ where her birth is not exactly known.</summary>
public sealed record FoundAge(TimeLength Youngest, TimeLength Oldest) : Found;

/// <summary>A number; the two differ where a result allows several values.</summary>
/// <param name="Low">Lowest possible, perhaps negative infinity.</param>
/// <param name="High">Highest possible, perhaps infinity.</param>
/// <param name="Unit">The unit's symbol; null for scores and counts.</param>
/// <param name="Date">When the (latest) result was recorded; null for a fact or a mean.</param>
/// <param name="From">How many results or animals it is drawn from.</param>
public sealed record FoundNumber(double Low, double High, string? Unit, LocalDate? Date, int From) : Found;

/// <summary>A test's latest answers, several where the day has several; null for one that is not known.</summary>
public sealed record FoundAnswers(ImmutableArray<string?> Answers, LocalDate Date) : Found;

/// <summary>A fact's value, ready to print.</summary>
public sealed record FoundText(string Text) : Found;

/// <summary>Whether she was in a spell.</summary>
/// <param name="Day">The last day in the window on which she was; null where she was on none.</param>
public sealed record FoundSpell(LocalDate? Day) : Found;

/// <summary>Her standing in the herd.</summary>
/// <param name="Greater">How many have a greater value.</param>
/// <param name="NoValue">How many have none.</param>
/// <param name="Of">How many there are.</param>
/// <param name="Value">Hers.</param>
public sealed record FoundStanding(int Greater, int NoValue, int Of, double Value) : Found;
