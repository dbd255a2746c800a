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
}
