namespace Byrelaw.Records.Building;

/// <summary>One pot of a mob that stands twice: samples of one mob, equal in day, kind and value, are one, unless their own numbers differ.</summary>
internal static class SameSamples
{
    // Values are compared in the measure's unit; 102 umol/kg and 6.481692 mg/kg are one value.
    private const int Decimals = 9;

    /// <summary>The rows without those that stand there already; these go to <paramref name="again"/>.</summary>
    public static List<GroupRow> Once(IReadOnlyList<GroupRow> rows, Vocabulary vocabulary, List<GroupRow> again)
    {
        var seen = new HashSet<(int Mob, int Kind, int Day, double Low, double High, string? Sample)>();
        var once = new List<GroupRow>(rows.Count);
        foreach (var row in rows.OrderBy(row => row.Line))
        {
            var isSample = vocabulary.Kinds[row.Kind] is MeasureKind && row.Range != AllowedRange.NotKnown;
            if (!isSample || seen.Add((row.Mob, row.Kind, row.Day, Rounded(row.Range.Low), Rounded(row.Range.High), row.Sample)))
            {
                once.Add(row);
            }
            else
            {
                again.Add(row);
            }
        }

        return once;
    }

    private static double Rounded(double value) => double.IsInfinity(value) ? value : Math.Round(value, Decimals);
}
