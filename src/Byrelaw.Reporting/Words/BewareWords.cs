namespace Byrelaw.Reporting.Words;

/// <summary>What stands beside an animal in a table that may be carried about without its page.</summary>
public static class BewareWords
{
    /// <summary>All cautions of a line, with what a hormone does where the list is for treatment.</summary>
    public static string Of(AnimalReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var text = string.Join("; ", Cautions.Of(report));
        return !report.On.IsForTreatment ? text
            : text.Length == 0 ? SafetyNotes.HormoneLine
            : $"{Phrases.Sentence(text)}. {SafetyNotes.HormoneLine}";
    }
}
