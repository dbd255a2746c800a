namespace Byrelaw.Planning.Slipping;

/// <summary>The treatment after which an animal's heat comes when it comes.</summary>
public static class PointOfNoReturn
{
    /// <summary>
    /// The first treatment that speaks of prostaglandin, for that ends the corpus luteum and nothing brings it back; in a method without, the last
    /// one. Null for natural heat.
    /// </summary>
    public static TreatmentDay? Of(TreatmentCalendar calendar)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        return calendar.Days.FirstOrDefault(day => NameFolding.Fold(day.Step.Text).Contains("prostaglandin", StringComparison.Ordinal))
            ?? (calendar.Days.IsEmpty ? null : calendar.Days[^1]);
    }
}
