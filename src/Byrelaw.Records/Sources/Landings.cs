namespace Byrelaw.Records.Sources;

/// <summary>A cell's value in the landed form.</summary>
internal static class Landings
{
    /// <summary>The value.</summary>
    /// <param name="source">How its numbers are written.</param>
    /// <param name="cell">The cell.</param>
    /// <param name="meaning">What the farm says that it means; null where it is read as it stands.</param>
    /// <param name="times">What a number is multiplied by.</param>
    public static string Value(TranslatedSource source, string cell, CellMeaning? meaning, double times) => meaning?.Is switch
    {
        IsBlank => "",
        IsPending => "pending",
        IsValue said => said.Text,
        IsLimit limit => (limit.IsLess ? "<" : ">") + limit.Limit.ToString(CultureInfo.InvariantCulture),
        _ => source.Number(cell, times),
    };
}
