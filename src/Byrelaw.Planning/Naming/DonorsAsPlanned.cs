using Byrelaw.Judging.Supposing;
using Byrelaw.Records.Reading;

namespace Byrelaw.Planning.Naming;

/// <summary>
/// Judges the donors of one session after the other as if those who may be used had been collected in the sessions before. Once a day is past only the book counts: a collection
/// that is not on record then was none.
/// </summary>
internal sealed class DonorsAsPlanned(Draft draft, LocalDate today)
{
    private readonly EventKind? _collected = CollectedBy(draft.Rulebook);
    private readonly List<SupposedRow> _planned = [];

    /// <summary>What is supposed so far: a collection of each donor that is named for a session before.</summary>
    public ImmutableArray<SupposedRow> Planned => [.. _planned];

    /// <summary>The lists of the next session, its donors as planned.</summary>
    /// <param name="round">Its days.</param>
    /// <param name="rulebook">With the programme moved to it.</param>
    /// <param name="lists">Judged by the book.</param>
    public ImmutableArray<ListJudgement> Next(Round round, Rulebook rulebook, ImmutableArray<ListJudgement> lists)
    {
        if (ProgrammeLists.Judged(lists, ProgrammeLists.Donors(round.Programme)) is not { } donors)
        {
            return lists;
        }

        if (_planned.Count > 0 && SupposedFarm.Of(rulebook, draft.Herd) is { } farm)
        {
            var planned = farm.Judge(new Supposition { Records = new Supposed { Rows = Planned } }).JudgeList(donors.Choice) with { Session = donors.Session };
            (lists, donors) = (lists.Replace(donors, planned), planned);
        }

        if (_collected is { } kind && round.Collection is { } day && day >= today && rulebook.Plans.Stopped.All(stopped => stopped.Session != round.Number))
        {
            _planned.AddRange(donors.Animals.Where(donor => donor.Answer.MayBeUsed()).Select(donor => new SupposedRow(day, donor.Number, kind.Name)));
        }

        return lists;
    }

    /// <summary>The event by which the programme's donors are collected: of several that mark a collection, a flush is the one that is named for it. Null where no event marks one.</summary>
    private static EventKind? CollectedBy(Rulebook rulebook)
    {
        EventKind[] all = [.. rulebook.Vocabulary.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Collection)];
        var flushed = rulebook.Programme!.Aims.Embryos == EmbryoOrigin.Flushed;
        return Array.Find(all, kind => NameFolding.Fold(kind.Name).Contains("flush", StringComparison.Ordinal) == flushed) ?? all.FirstOrDefault();
    }
}
