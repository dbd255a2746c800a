namespace Byrelaw.Judging.Verdicts;

/// <summary>What is said of an animal on a list.</summary>
public enum Answer : byte
{
    /// <summary>All rules hold on every judging day.</summary>
    Ready,

    /// <summary>They will hold if nothing happens after the known day.</summary>
    OnCourse,

    /// <summary>They do not hold on the judging days, but will on later ones, or may.</summary>
    Later,

    /// <summary>No rule fails, and the records do not say whether all hold; something has to be found out.</summary>
    Ask,

    /// <summary>They do not hold, and time alone will not change that.</summary>
    No,
}

/// <summary>What an answer means for whoever has work to do.</summary>
public static class AnswerMeaning
{
    /// <summary>Whether she may be used: now, or if nothing happens until then.</summary>
    public static bool MayBeUsed(this Answer answer) => answer is Answer.Ready or Answer.OnCourse;
}
