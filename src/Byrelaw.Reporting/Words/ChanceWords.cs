namespace Byrelaw.Reporting.Words;

/// <summary>Shares and chances, no finer than they are known.</summary>
public static class ChanceWords
{
    /// <summary><c>83%</c>; <c>under 1%</c> and <c>over 99%</c> at the ends, unless it is nothing or all.</summary>
    public static string Of(double share) => share switch
    {
        <= 0 => "0%",
        >= 1 => "100%",
        < 0.01 => "under 1%",
        > 0.99 => "over 99%",
        _ => (100 * share).ToString("0", CultureInfo.InvariantCulture) + "%",
    };

    /// <summary>A rate in a table: one decimal where it is small.</summary>
    public static string Rate(double share) =>
        (100 * share).ToString(share is > 0 and < 0.1 ? "0.0" : "0", CultureInfo.InvariantCulture) + "%";

    /// <summary>An average count: one decimal.</summary>
    public static string Mean(double mean) => mean.ToString("0.0", CultureInfo.InvariantCulture);
}
