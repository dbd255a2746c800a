namespace Byrelaw.Records.Doubts;

/// <summary>How much of one kind is on record.</summary>
/// <param name="Kind">The event, measure or test.</param>
/// <param name="Count">Entries of animals; an event of a mob counts for each member.</param>
/// <param name="MobCount">Results of mobs.</param>
/// <param name="First">The first day.</param>
/// <param name="Last">The last day.</param>
public sealed record KindSummary(Kind Kind, int Count, int MobCount, LocalDate First, LocalDate Last);

/// <summary>What is in the records.</summary>
/// <param name="Animals">How many animals there are.</param>
/// <param name="Females">How many of them are female.</param>
/// <param name="Males">How many are male; of the others the sex is not known.</param>
/// <param name="Present">How many are surely in the herd on the day the records reach.</param>
/// <param name="Mobs">The mobs that animals are ever in, sorted.</param>
/// <param name="Kinds">Kinds with at least one entry, in the order of their declaration.</param>
/// <param name="UnreadableRows">Rows of both files that could not be read.</param>
public sealed record RecordSummary(
    int Animals, int Females, int Males, int Present, ImmutableArray<string> Mobs, ImmutableArray<KindSummary> Kinds, int UnreadableRows)
{
    internal static RecordSummary Of(Herd herd, int unreadableRows) => new(
        herd.Count,
        herd.Sexes.Count(sex => sex == Sex.Female),
        herd.Sexes.Count(sex => sex == Sex.Male),
        Enumerable.Range(0, herd.Count).Count(animal => herd.Membership.At(animal, herd.Coverage.KnownDay) == Presence.In),
        [.. herd.Mobs.Names],
        [.. herd.Vocabulary.Kinds.Select(kind => KindOf(herd, kind)).OfType<KindSummary>()],
        unreadableRows);

    private static KindSummary? KindOf(Herd herd, Kind kind)
    {
        var days = herd.Runs[kind.Id].Days;
        var mobDays = herd.MobRuns[kind.Id]?.Days ?? [];
        return days.Length + mobDays.Length == 0
            ? null
            : new KindSummary(kind, days.Length, mobDays.Length, Day.Date(days.Concat(mobDays).Min()), Day.Date(days.Concat(mobDays).Max()));
    }
}
