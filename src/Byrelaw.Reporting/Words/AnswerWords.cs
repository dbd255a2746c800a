namespace Byrelaw.Reporting.Words;

/// <summary>An animal's answer as a shape and a word, so that neither colour nor sight of the shape is needed.</summary>
public static class AnswerWords
{
    /// <summary>All answers, best first.</summary>
    public static readonly Answer[] All = [Answer.Ready, Answer.OnCourse, Answer.Later, Answer.Ask, Answer.No];

    /// <summary>The shape.</summary>
    public static string Shape(Answer answer) => answer switch
    {
        Answer.Ready => "✓",
        Answer.OnCourse => "→",
        Answer.Later => "○",
        Answer.Ask => "?",
        _ => "✗",
    };

    /// <summary>The word.</summary>
    public static string Word(Answer answer) => answer switch
    {
        Answer.Ready => "Ready",
        Answer.OnCourse => "On course",
        Answer.Later => "Later",
        Answer.Ask => "Ask",
        _ => "No",
    };

    /// <summary>Both: <c>✓ Ready</c>.</summary>
    public static string Both(Answer answer) => $"{Shape(answer)} {Word(answer)}";

    /// <summary>The word on a list: whoever is only looked at is never called Ready.</summary>
    public static string Word(Answer answer, ListUse use) => (answer, use) switch
    {
        (Answer.Ready, ListUse.ForLookingOnly) => "Matches",
        (Answer.OnCourse, ListUse.ForLookingOnly) => "Will match",
        _ => Word(answer),
    };

    /// <summary>Both, on a list: <c>✓ Matches</c>.</summary>
    public static string Both(Answer answer, ListUse use) => $"{Shape(answer)} {Word(answer, use)}";

    /// <summary>What the answer says, for whoever meets it first.</summary>
    public static string Meaning(Answer answer) => answer switch
    {
        Answer.Ready => "all rules hold on the judging days",
        Answer.OnCourse => "all rules hold if nothing happens after the records end",
        Answer.Later => "not on the judging days, but later: for sure, or if what is still to be asked turns out well",
        Answer.Ask => "no rule forbids her, and the records do not say whether all hold; something has to be found out",
        _ => "not, and time alone does not change it",
    };
}
