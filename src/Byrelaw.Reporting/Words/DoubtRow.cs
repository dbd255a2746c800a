namespace Byrelaw.Reporting.Words;

/// <summary>A record that a doubt is about.</summary>
/// <param name="Animal">Her number; null where the row may be anybody's.</param>
/// <param name="Date">When; null where that is not known.</param>
/// <param name="File">As people call it.</param>
/// <param name="Line">From 1.</param>
public sealed record DoubtRow(string? Animal, LocalDate? Date, string File, int Line)
{
    /// <summary>A row of the events' file.</summary>
    public static DoubtRow Of(Unexpected entry, Herd herd) => Of(entry.Animal, entry.Day, entry.Line, herd);

    /// <summary>A row of either file.</summary>
    public static DoubtRow Of(RowInDoubt row, Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var place = row.IsOfAnimals ? herd.AnimalPlace(row.Line) : herd.EventPlace(row.Line);
        return new DoubtRow(
            row.Animal < 0 ? null : herd.Numbers[row.Animal], row.Day <= Day.Start ? null : Day.Date(row.Day), FileWords.Short(place.File), place.Line);
    }

    /// <summary>A row of the events' file, or the animal's own where it has no line there.</summary>
    public static DoubtRow Of(int animal, int day, int line, Herd herd)
    {
        ArgumentNullException.ThrowIfNull(herd);
        var place = line > 0 ? herd.EventPlace(line) : herd.AnimalPlace(animal < 0 ? line : herd.AnimalLines[animal]);
        return new DoubtRow(animal < 0 ? null : herd.Numbers[animal], day <= Day.Start ? null : Day.Date(day), FileWords.Short(place.File), place.Line);
    }
}
