namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What is missing about days: kinds that nobody says are kept, and rows that could not be read.</summary>
public sealed class MissingDays(Knowledge knowledge, Moment moment)
{
    private AnimalAsRead Animal => knowledge.Farm.Animals[moment.Animal];

    /// <summary>Of all windows that count from an event.</summary>
    public IEnumerable<Missing> OfAnchors(IReadOnlyList<Window> windows) => windows.SelectMany(window => window switch
    {
        SinceLast since => OfAnchor(since.Kinds),
        FromAfterLast from => OfAnchor(from.Kinds),
        BeforeDay { Day.Date: null } before => OfAnchor(before.Day.Last),
        DaysAfter { Day.Date: null } after => OfAnchor(after.Day.Last),
        _ => [],
    });

    /// <summary>When she last had one of these: on record, whatever may have happened since; else, whether it ever happened.</summary>
    public IEnumerable<Missing> OfAnchor(IReadOnlyList<Kind> kinds)
    {
        var last = knowledge.Anchors.Last(kinds, moment.Animal, moment.Day, moment.Strict);
        return last.Never ? []
            : last.Recorded is { } day ? kinds.SelectMany(kind => NotKept(MissingReason.NotKept, kind, day + 1, moment.Day))
            : kinds.SelectMany(kind => NotKept(MissingReason.NeverRecorded, kind, knowledge.Coverage.Dawn, moment.Day));
    }

    /// <summary>A kind over some days.</summary>
    public IEnumerable<Missing> NotKept(MissingReason reason, Kind kind, int from, int to)
    {
        if (!knowledge.Coverage.Keeps(moment.Animal, kind, from, to))
        {
            yield return IsForWantOfHerBirth(kind, from, to)
                ? new Missing(MissingReason.FactMissing, "born", null, null, SettledBy.Yards)
                : new Missing(reason, kind.Declaration.Name, Date(from), Date(to), SettledBy.Yards) { Filter = reason == MissingReason.NeverRecorded ? MissingReference.FilterOf(kind) : "" };
        }

        foreach (var missing in Unread(kind, from, to))
        {
            yield return missing;
        }
    }

    /// <summary>Rows that may be of her, of this kind, in these days.</summary>
    public IEnumerable<Missing> Unread(Kind kind, int from, int to) => knowledge.Farm.Unread
        .Where(row => row.MayBeOf(Animal) && row.MayBeA(kind) && row.MayBeIn(row.IsOnRecord ? from : Math.Max(from, CoverageReference.NeededFrom(Animal, kind)), to))
        .Select(row => Of(row, kind));

    /// <summary>One row that could not be read.</summary>
    public Missing Of(Unread row, Kind kind) => row.LostTo is { } last
        ? new(MissingReason.StartNotOnRecord, kind.Name, row.LostFrom is { } first ? DayNumber.Date(first) : null, DayNumber.Date(last), SettledBy.Yards, row.Line)
        : new(
        IsOfDetails(row) ? MissingReason.DetailNotKnown : MissingReason.UnreadableRow, kind.Declaration.Name, (row.SheetFrom ?? row.Day) is { } from ? DayNumber.Date(from) : null, (row.SheetTo ?? row.Day) is { } to && to != int.MaxValue ? DayNumber.Date(to) : null,
        SettledBy.Yards, row.Line)
        { Filter = IsOfDetails(row) ? MissingReference.FilterOf(kind) : "" };

    /// <summary>The row can be read, and only its details do not say whether it is meant.</summary>
    private bool IsOfDetails(Unread row) =>
        row.IsOfDetails && !knowledge.Farm.Unread.Any(other => other.Kind?.Id == row.Kind!.Declaration.Id && other.Line == row.Line && other.Animal == row.Animal);

    public LocalDate? Date(int day) => day <= knowledge.Coverage.Dawn ? null : DayNumber.Date(day);

    /// <summary>It is kept since a day, and only the days before it are open: of one born since then they would not count.</summary>
    private bool IsForWantOfHerBirth(Kind kind, int from, int to) =>
        Animal.BornFirst is null && knowledge.Coverage.DeclaredSince(kind) is { } since && from < since && since <= to
        && knowledge.Farm.Presence.CoveredFrom(moment.Animal) <= since && knowledge.Coverage.Keeps(moment.Animal, kind, since, to);
}
