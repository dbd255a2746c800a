namespace Byrelaw.Loading;

/// <summary>How far records reach by a person's word, for one run.</summary>
public static class RecordsTo
{
    /// <summary>The same rules with records that reach to a day; as they are where nobody says one.</summary>
    public static RulebookReading ReachingTo(this RulebookReading reading, LocalDate? day)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return day is { } to && reading.Rulebook.Records is { } keeping ? reading with { Rulebook = reading.Rulebook with { Records = keeping.ReachingTo(to) } } : reading;
    }
}
