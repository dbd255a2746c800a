namespace Byrelaw.Reporting.Lists;

/// <summary>The most a list can give: those who may be used, and those to ask about.</summary>
public static class AtBest
{
    /// <summary>Such as <c>24, and 28 to ask about: 52 at best</c>.</summary>
    public static string Of(ListJudgement list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var (used, asked) = (list.Count(Answer.Ready) + list.Count(Answer.OnCourse), list.Count(Answer.Ask));
        return asked == 0 ? $"{used}, and none to ask about" : $"{used}, and {asked} to ask about: {used + asked} at best";
    }
}
