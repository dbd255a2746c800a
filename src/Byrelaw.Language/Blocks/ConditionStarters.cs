namespace Byrelaw.Language.Blocks;

/// <summary>Words with which only a condition starts.</summary>
internal static class ConditionStarters
{
    /// <summary>Whether a line that starts with this folded word is surely meant as a condition.</summary>
    public static bool Holds(string word) => word is "no" or "at" or "more" or "less" or "exactly" or "between"
        or "latest" or "lowest" or "highest" or "average" or "change" or "not" or "any" or "all" or "none";
}
