namespace Byrelaw.Records.Herds;

/// <summary>The last entry of each file of records.</summary>
public static class LastEntries
{
    /// <summary>By file as shown, in the order of the sources; null where no entry of it has a day. Sheets that are of one day are left out.</summary>
    public static IReadOnlyList<(string File, LocalDate? Last)> Of(Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var run in herd.Runs)
        {
            for (var entry = 0; entry < run.Days.Length; entry++)
            {
                var file = herd.EventPlace(run.Lines[entry]).File;
                last[file] = Math.Max(last.GetValueOrDefault(file, Day.Start), run.Days[entry]);
            }
        }

        return [.. (herd.Places?.Reaching ?? [herd.EventsFile]).Select(file => (file, last.TryGetValue(file, out var day) && day > Day.Start ? Day.Date(day) : (LocalDate?)null))];
    }
}
