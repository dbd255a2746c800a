namespace Byrelaw.Language.Grammar;

/// <summary>The words for units of time; reserved only directly after a number.</summary>
internal static class TimeUnitWords
{
    /// <summary>The unit that a folded word means; null for another word.</summary>
    public static TimeUnit? Find(string folded) => folded switch
    {
        "day" or "days" => TimeUnit.Days,
        "week" or "weeks" => TimeUnit.Weeks,
        "month" or "months" => TimeUnit.Months,
        "year" or "years" => TimeUnit.Years,
        _ => null,
    };
}
