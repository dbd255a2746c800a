namespace Byrelaw.Checking.MadeUp;

/// <summary>An animal that nobody owns, to try a rule on.</summary>
/// <param name="Number">Any text that no other animal of the herd has.</param>
public sealed record MadeUpAnimal(string Number)
{
    /// <summary>A date, a month or a year, as <c>animals.csv</c> has it; empty where it is not on record.</summary>
    public string Born { get; init; } = "";

    /// <summary><c>F</c>, <c>M</c> or empty.</summary>
    public string Sex { get; init; } = "F";

    /// <summary>The mob she has always been in; empty where her moves say it, or nothing does.</summary>
    public string Mob { get; init; } = "";

    /// <summary>Recorded facts by declared name, in the text that <c>animals.csv</c> would have, <c>parity</c> among them; what is missing is blank.</summary>
    public ImmutableDictionary<string, string> Facts { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>The line of the rule file that she is written on, from 1; explanations name it. 0 where she is written nowhere.</summary>
    public int Line { get; init; }
}
