using Byrelaw.Checking.MadeUp;

namespace Byrelaw.Reporting.Comparing;

/// <summary>A made-up animal that shows what a change does, in a sentence.</summary>
internal static class MadeUpWords
{
    /// <summary>Such as <c>Calving on 21 August 2026 (60 days before): not met before, met now.</c></summary>
    public static string Of(BoundaryAnimal shown)
    {
        var records = shown.Rows.Select(row => Row(row, shown.Day))
            .Concat(shown.Animal.Facts.Where(fact => fact.Value.Length > 0).OrderBy(fact => fact.Key, StringComparer.Ordinal).Select(fact => $"{fact.Key} {fact.Value}"))
            .Append(shown.Rows.IsEmpty && LocalDatePattern.Iso.Parse(shown.Animal.Born) is { Success: true, Value: var born } ? $"born on {Dates.Long(born)}" : "nothing else on record");
        return $"{Phrases.Sentence(string.Join(", ", records))}: {Word(shown.Old)} before, {Word(shown.New)} now.";
    }

    /// <summary>For which day they are judged.</summary>
    public static string Heading(LocalDate day) => $"Made-up animals that show it, judged for {Dates.Long(day)}";

    private static string Row(MadeUpRow row, LocalDate day)
    {
        var before = Period.DaysBetween(row.Date, day);
        var amount = row.Value.Length == 0 ? "" : $" {row.Value}{(row.Unit.Length == 0 ? "" : $" {row.Unit}")}";
        return $"{row.Kind}{amount} on {Dates.Long(row.Date)} ({(before == 0 ? "that day" : $"{Numbers.Count(before, "day", "days")} before")})";
    }

    private static string Word(Truth truth) => truth switch { Truth.True => "met", Truth.False => "not met", _ => "not known" };
}
