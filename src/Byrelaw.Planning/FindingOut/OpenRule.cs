namespace Byrelaw.Planning.FindingOut;

/// <summary>A rule that is not known of an animal, and what could be supposed so that it holds, the likeliest first.</summary>
/// <param name="Gate">The place of its list among what must hold; -1 for what a method asks.</param>
/// <param name="Name">The rule's name.</param>
/// <param name="Ways">Each of them one record, or several together; none where nothing can be supposed.</param>
internal sealed record OpenRule(int Gate, string Name, ImmutableArray<ImmutableArray<AskedRecord>> Ways)
{
    /// <summary>Where nothing can be supposed for want of time: what would do; else null.</summary>
    public AskedRecord? Closed { get; init; }
}

/// <summary>An animal of whom nothing speaks against her and something is not known.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Rules">The rules that are not known.</param>
internal sealed record OpenAnimal(int Animal, ImmutableArray<OpenRule> Rules);
