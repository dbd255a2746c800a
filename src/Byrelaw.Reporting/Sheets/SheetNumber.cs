using System.Security.Cryptography;
using Byrelaw.Records.Ledger;

namespace Byrelaw.Reporting.Sheets;

/// <summary>The number of a sheet: <c>H1004-5b20e1</c>, the work, month and day, and the start of the SHA-256 of its rows.</summary>
internal static class SheetNumber
{
    private const int FewestDigits = 6;

    /// <summary>The number; longer where the ledger has it for a sheet that this one is not, or that is void since.</summary>
    /// <param name="work">The letter of its work.</param>
    /// <param name="day">The day that it is for.</param>
    /// <param name="rows">Its rows as CSV, the cells of <c>sheet</c> left empty.</param>
    /// <param name="ledger">The sheets that were written; null for none.</param>
    /// <param name="isAnother">Whether a sheet of that number is another one, or is used up.</param>
    public static string Of(string work, LocalDate day, string rows, SheetLedger? ledger, Func<Sheet, bool> isAnother)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(rows)));
        var digits = FewestDigits;
        while (ledger?.Sheets.FirstOrDefault(sheet => sheet.Number == With(digits)) is { } other && (isAnother(other) || ledger.Sheets.Any(sheet => sheet.Replaces.Contains(other.Number))) && digits < hash.Length)
        {
            digits++;
        }

        return With(digits);

        string With(int count) => string.Create(CultureInfo.InvariantCulture, $"{work}{day.Month:00}{day.Day:00}-{hash[..count]}");
    }
}
