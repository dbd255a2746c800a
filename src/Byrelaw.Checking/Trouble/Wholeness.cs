namespace Byrelaw.Checking.Trouble;

/// <summary>Whether all of a rulebook could be read. Where not, nothing may be claimed of what is not in it.</summary>
public static class Wholeness
{
    /// <summary>Whether something in it could not be read.</summary>
    public static bool IsBroken(Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return rulebook.BrokenParts.Length > 0 || rulebook.Rules.Any(rule => rule.IsBroken)
            || rulebook.Prefers.Any(prefer => prefer.IsBroken) || rulebook.Defines.Any(define => define.IsBroken);
    }
}
