using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Sheets;

/// <summary>Those who stood on an earlier sheet of the morning and do not any more: what was done to them is to be said with this one.</summary>
internal static class DrawnTakenOff
{
    public static void Add(DocumentBuilder part, DrawnSheet drawn)
    {
        var table = new Table("Not to be done any more: what was done is to be said here", "row", "number", "was", "would have been", "was it done?", "why not") { IsForTheYards = true };
        foreach (var row in drawn.Rows.Where(row => row.TakenOff is not null))
        {
            table.Add($"{row.Row}", Wording.Bold(row.Number), row.TakenOff!, Phrases.And([.. row.Writes.Select(entry => entry.Device is { } device ? $"{entry.Kind} (device {device})" : entry.Kind)]), "yes no", DrawnPage.Blank);
        }

        part.Gap().Sentence(table.IsEmpty ? "" : Wording.Bold("Taken off: on an earlier sheet of this morning")).Table(table);
    }
}
