namespace Byrelaw.Reporting.Words;

/// <summary>Amounts of money as people write them, to whole units: plans are not cash books.</summary>
public static class MoneyWords
{
    /// <summary><c>12,350 NZD</c>.</summary>
    public static string Of(double amount, string currency) => $"{Number(amount)} {currency}";

    /// <summary><c>12,350 NZD</c>.</summary>
    public static string Of(Money money) => Of(money.Amount, money.Currency);

    /// <summary><c>12,350</c>; small amounts with their cents.</summary>
    public static string Number(double amount) =>
        Math.Abs(amount) < 20 && Math.Abs(amount - Math.Round(amount)) > 0.004
            ? amount.ToString("0.00", CultureInfo.InvariantCulture)
            : Math.Round(amount).ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary><c>, in eight seasons of ten between 7,070 and 9,819</c>; empty where the two are one amount.</summary>
    /// <param name="low">One season in ten costs less.</param>
    /// <param name="high">One season in ten costs more.</param>
    /// <param name="before">What parts it from the words before.</param>
    public static string Spread(double low, double high, string before) =>
        Number(low) == Number(high) ? "" : $"{before}in eight seasons of ten between {Number(low)} and {Number(high)}";
}
