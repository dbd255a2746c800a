namespace Byrelaw.Records.Sources;

/// <summary>The English names of months, whole or their first three letters, as spreadsheets write them.</summary>
internal static class MonthNames
{
    private static readonly FrozenDictionary<string, int> All = CultureInfo.InvariantCulture.DateTimeFormat.MonthNames.Take(12)
        .SelectMany((name, i) => new[] { name, name[..3] }.Distinct().Select(text => (Text: text, Month: i + 1))).Append((Text: "Sept", Month: 9))
        .ToFrozenDictionary(pair => pair.Text, pair => pair.Month, StringComparer.OrdinalIgnoreCase);

    /// <summary>The month, from 1; null for no name.</summary>
    public static int? Number(string name) => All.TryGetValue(name, out var month) ? month : null;
}
