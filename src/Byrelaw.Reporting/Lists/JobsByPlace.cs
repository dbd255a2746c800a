namespace Byrelaw.Reporting.Lists;

/// <summary>What to find out next, of all lists of a draft together, by the place where it is done.</summary>
internal static class JobsByPlace
{
    private const int JobsShown = 8;
    private const int NumbersShown = 16;

    /// <summary>A column each for the yards and the laboratory, and one for the desk; none without a job.</summary>
    public static ImmutableArray<JobColumn> Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var found = draft.Lists.Where(list => !list.IsBroken).Select(list => new ListReport(draft, list)).SelectMany(list => FindOut.Of(list).Where(one => !one.IsLater).Select(one => (One: one, List: list)))
            .DistinctBy(one => (one.One.What, string.Join(',', one.One.Numbers))).OrderBy(one => one.One.By).ThenByDescending(one => one.One.Alone).ThenByDescending(one => one.One.Numbers.Count).ToList();
        JobColumn[] columns =
        [
            new("In the yards", Jobs(found.Where(one => one.One.Who == SettledBy.Yards))),
            new("Laboratory, or time", Jobs(found.Where(one => one.One.Who == SettledBy.LaboratoryOrTime))),
            new("At the desk", [.. Desk(draft)]),
        ];
        return [.. columns.Where(column => !column.Jobs.IsEmpty)];
    }

    /// <summary>The first few; how many more there are is said, for each stands on its own list.</summary>
    private static ImmutableArray<JobLine> Jobs(IEnumerable<(FindOut One, ListReport List)> found)
    {
        (FindOut One, ListReport List)[] all = [.. found];
        IEnumerable<JobLine> more = all.Length <= JobsShown ? [] : [new(false, $"{Numbers.Count(all.Length - JobsShown, "more job", "more jobs")}", "on the lists of the sessions", "")];
        return [.. all.Take(JobsShown).Select(one => Job(one.One, one.List)), .. more];
    }

    /// <summary>What it is too early for has no box.</summary>
    private static JobLine Job(FindOut found, ListReport list)
    {
        var early = found.From is { } first && list.Herd.ReachesADay && first > list.Herd.KnownDay;
        var settles = found.Alone == 0 ? found.Numbers.Count == 1 ? "she needs more besides" : "each needs more besides" : found.Alone == found.Numbers.Count ? $"settles {found.Alone switch { 1 => "her", 2 => "both", _ => $"all {found.Alone}" }}" : $"that alone settles {found.Alone} of them";
        return new(!early, Phrases.Sentence(found.What), Phrases.FirstOf(found.Numbers, NumbersShown),
            $"{(early ? $"{list.Short(found.From!.Value)} to {list.Short(found.By)}" : $"by {list.Short(found.By)}")}, for {list.NameInSession}; {settles}");
    }

    private static IEnumerable<JobLine> Desk(Draft draft)
    {
        if (draft.Lists.Any(list => list.IsBroken))
        {
            yield return new(true, "Mend the rule files", "Lines of them cannot be read, and until then nobody is Ready.", "now");
        }

        var errors = draft.Herd.Problems.Where(problem => problem.Severity == Severity.Error).Select(error => $"{FileWords.Short(error.File)} line {error.Line}").Distinct().ToList();
        if (errors.Count > 0)
        {
            yield return new(true, $"Mend {Numbers.Count(errors.Count, "line", "lines")} of the records", Phrases.FirstOf(errors, 6), $"today; what {(errors.Count == 1 ? "it" : "they")} might have said is in doubt");
        }

        var unknown = draft.Lists.SelectMany(list => list.Unknown).Distinct().ToList();
        if (unknown.Count > 0)
        {
            yield return new(true, "Look up who they are", $"{Phrases.And(unknown)}: named in the programme, not in the records.", "");
        }

        if (draft.Lists.Any(list => list.Count(Answer.OnCourse) > 0))
        {
            yield return new(true, "Write down whatever happens to any of them", "heat, service, bull, calving, test, illness or treatment", "each day; then draw the lists up again");
        }
    }
}
