namespace Byrelaw.Planning.Sessions;

/// <summary>One collection (or, with frozen embryos, none) and the transfers that follow it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Programme">The programme with its dates moved to this session.</param>
/// <param name="Collection">The day of collection or flush; null for frozen embryos.</param>
/// <param name="FirstTransfer">First day of transfers.</param>
/// <param name="FinalTransfer">Last day of transfers.</param>
public sealed record Session(int Number, Programme Programme, LocalDate? Collection, LocalDate FirstTransfer, LocalDate FinalTransfer)
{
    /// <summary>The days on which embryos are transferred.</summary>
    public IEnumerable<LocalDate> TransferDays => DayRuns.From(FirstTransfer, FinalTransfer);

    /// <summary>Days since heat (or fertilisation) of an embryo that is transferred on a day.</summary>
    public int EmbryoAge(LocalDate transfer) => Programme.Aims.EmbryoAgeOn(transfer, Collection);

    /// <summary>Which heats serve its transfers.</summary>
    public HeatWindow Window => HeatWindow.Of(Programme.Aims, Collection, FirstTransfer, FinalTransfer);

    /// <summary>All sessions of a programme in order; none where it has no transfers. Of one that is moved to a later session, that one.</summary>
    public static ImmutableArray<Session> Of(Programme programme)
    {
        ArgumentNullException.ThrowIfNull(programme);
        var first = programme.Date("collection");
        if (programme.Session > 1)
        {
            return Of(programme, programme.Session, first) is { } own ? [own] : [];
        }

        IEnumerable<LocalDate?> collections = programme.Aims is { OnAVisit: not null, Repeat: { } repeat } && first is { } start
            ? Enumerable.Range(0, repeat.Times).Select(i => (LocalDate?)(repeat.Every with { Count = repeat.Every.Count * i }).After(start))
            : programme.Aims.Collections.Length > 1 && programme.Aims.Collections[0] == first
                ? programme.Aims.Collections.Select(day => (LocalDate?)day) : [first];
        return [.. collections.Select((day, i) => Of(programme, i + 1, day)).OfType<Session>()];
    }

    private static Session? Of(Programme programme, int number, LocalDate? collection)
    {
        var moved = (collection is { } day ? MovedProgramme.To(programme, "collection", day) : programme) with { Session = number };
        return moved.Date("first transfer") is { } first
            ? new Session(number, moved, collection, first, moved.Date("final transfer") ?? first) : null;
    }
}
