namespace Byrelaw.Language.Lexing;

/// <summary>Words that end a name inside a line. A name that holds one is quoted, or declared.</summary>
internal static class ReservedWords
{
    private static readonly FrozenSet<string> All = (
        "at least most more less than exactly between and or not no none is of in on since from before after ago ever " +
        "last latest lowest highest average change recorded for until by as also answers with").Split(' ').ToFrozenSet();

    /// <summary>Whether a folded word is reserved.</summary>
    public static bool Holds(string folded) => All.Contains(folded);
}
