namespace Byrelaw.Reporting.Documents;

/// <summary>A box to find an animal's row in, and buttons to see some of them only. Only a page with a script has it; without one all rows stand there.</summary>
/// <param name="Buttons">In order.</param>
public sealed record Finder(ImmutableArray<FinderButton> Buttons) : Drawn
{
    /// <inheritdoc/>
    public override IEnumerable<Element> InWords() => [];
}

/// <summary>What a button of the finder asks rows for.</summary>
public enum FinderKey
{
    /// <summary>Her answer.</summary>
    Answer,

    /// <summary>Whether the floor says anything of her.</summary>
    InCalf,

    /// <summary>Her mob.</summary>
    Mob,
}

/// <summary>A button that leaves only some rows.</summary>
/// <param name="Words">What stands on it.</param>
/// <param name="Key">What of a row.</param>
/// <param name="Value">What that must be; where it is an answer, nothing.</param>
/// <param name="Answer">The answer that it must be; null where it is none.</param>
public sealed record FinderButton(string Words, FinderKey Key, string Value, Answer? Answer = null);
