namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>A way to have animals ready on the day: treatments day by day, or waiting for a natural heat.</summary>
public sealed record Method
{
    /// <summary>Unique in the rulebook.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it is for donors that are flushed; else for recipients.</summary>
    public bool IsForDonors { get; init; }

    /// <summary>Whom it suits, asked of an animal on its day 0; null where it suits everyone.</summary>
    public Condition? Suits { get; init; }

    /// <summary>What is done, in order; none for natural heat.</summary>
    public ImmutableArray<MethodStep> Steps { get; init; } = [];

    /// <summary>The day of the method that counts as heat whether or not she shows one; null where heat is watched for.</summary>
    public int? HeatDay { get; init; }

    /// <summary>How many of those treated come in heat, and on which days; null where that is not asked.</summary>
    public HeatSpread? InHeat { get; init; }

    /// <summary>Natural heat: days from one heat to the next; null for a treatment.</summary>
    public int? CycleDays { get; init; }

    /// <summary>Of those in heat, how many are seen; null where nobody need see it.</summary>
    public Share? HeatSeen { get; init; }

    /// <summary>Of those that got so far (treated, or seen), how many are accepted on the day.</summary>
    public Share? Accepted { get; init; }

    /// <summary>What happens to those not seen in heat; null for nothing.</summary>
    public SecondChance? Again { get; init; }

    /// <summary>For donors: the day of the method on which they are flushed.</summary>
    public int? FlushDay { get; init; }

    /// <summary>Per animal treated; null where it is not said here.</summary>
    public Money? Cost { get; init; }

    /// <summary>The reason.</summary>
    public string? Because { get; init; }

    /// <summary>Where it comes from.</summary>
    public string? Source { get; init; }

    /// <summary>Where it is written.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>Whether nothing is given: whoever comes on heat by herself.</summary>
    public bool IsNatural => CycleDays is not null;
}

/// <summary>Part of a day.</summary>
public enum DayPart
{
    /// <summary>In the morning.</summary>
    Morning,

    /// <summary>In the evening, about twelve hours after the morning.</summary>
    Evening,
}

/// <summary>One treatment: <c>day 9 evening "GnRH", 60 hours after day 7</c>.</summary>
/// <param name="Day">Day of the method; the first is 0.</param>
/// <param name="Part">Morning or evening, if said.</param>
/// <param name="Text">What is done, in the file's words.</param>
/// <param name="After">Hours since an earlier step, if said.</param>
/// <param name="Cautions">What must be said beside it; filled from the words in its text.</param>
/// <param name="Span">Where.</param>
public sealed record MethodStep(int Day, DayPart? Part, string Text, HoursAfter? After, ImmutableArray<Caution> Cautions, SourceSpan Span)
{
    /// <summary>What becomes of a device that stays in her; null where none is touched.</summary>
    public DeviceMove? Device { get; init; }
}

/// <summary>What a step does with a device that stays in the animal.</summary>
public enum DeviceMove
{
    /// <summary>It goes in.</summary>
    In,

    /// <summary>It comes out.</summary>
    Out,
}

/// <summary>So many hours after the last step of an earlier day.</summary>
public sealed record HoursAfter(int Hours, int Day);

/// <summary>How many of those treated come in heat, and on which days of the method.</summary>
/// <param name="Share">Of those treated.</param>
/// <param name="Days">Days and their shares of all heats; the shares sum to 1. Empty where only the share is known.</param>
public sealed record HeatSpread(Share Share, ImmutableArray<(int Day, double Share)> Days);

/// <summary>Those not seen in heat by a day are treated again on a later one.</summary>
/// <param name="NotSeenBy">The last day of the first chance.</param>
/// <param name="From">First day on which the method may start again.</param>
/// <param name="To">The last.</param>
public sealed record SecondChance(int NotSeenBy, int From, int To);

/// <summary>What must be said wherever a substance is given: <c>caution prostaglandin "It ends a pregnancy."</c></summary>
/// <param name="About">The word that calls for it.</param>
/// <param name="Text">What to say.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Span">Where.</param>
public sealed record Caution(string About, string Text, string? Source, SourceSpan Span);
