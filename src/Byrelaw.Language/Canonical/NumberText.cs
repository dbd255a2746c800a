namespace Byrelaw.Language.Canonical;

/// <summary>Numbers and days the one way.</summary>
internal static class NumberText
{
    private const double Most = 1e27;

    /// <summary>Without trailing zeros, and never with an exponent.</summary>
    public static string Of(double value) => Math.Abs(value) < Most
        ? ((decimal)value).ToString("0.############################", CultureInfo.InvariantCulture)
        : value.ToString(CultureInfo.InvariantCulture);

    /// <summary>Year-month-day.</summary>
    public static string Of(NodaTime.LocalDate date) => date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
