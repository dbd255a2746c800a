using Byrelaw.Planning.Following;
using Byrelaw.Planning.Sheets;
using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Following;

/// <summary>What there is to follow on a day.</summary>
/// <param name="Draft">The rules and the records.</param>
/// <param name="Today">The day of looking.</param>
/// <param name="All">Everyone who had a transfer.</param>
/// <param name="InCalf">Whom to take as in calf that day, and who may be.</param>
public sealed record FollowReport(Draft Draft, LocalDate Today, ImmutableArray<Followed> All, InCalfOnDay InCalf)
{
    /// <summary>Those of a state.</summary>
    public IEnumerable<Followed> Of(FollowState state) => All.Where(one => one.State == state);
}

/// <summary>The page of those who had a transfer: what is overdue first, then what is to be done, then who is in calf until when.</summary>
internal static class FollowPage
{
    public static Page Of(FollowReport report) => new("follow", Title(report), Head(report),
    [
        Main(report, new DocumentBuilder().Heading(1, Title(report))).As("sheet"),
        new DocumentBuilder().Heading(2, "Cautions").Bullets(SafetyNotes.General).As("cautions"),
    ]);

    /// <summary>The same for a terminal, but for the general cautions.</summary>
    public static string OnTerminal(FollowReport report, Ink ink) => Main(report, new DocumentBuilder().Heading(1, Title(report)).Sentence(Head(report).InALine)).Sentence(Page.Foot).OnTerminal(ink);

    private static string Title(FollowReport report) => $"After transfer · {Dates.WithWeekday(report.Today)}";

    private static PageHead Head(FollowReport report) => new(report.Draft.Rulebook.Programme!.Name, ReachWords.Fact(report.Draft.Herd), new("void after", "the next record")) { Devices = DeviceWords.Of(report.Draft) };

    private static DocumentBuilder Main(FollowReport report, DocumentBuilder part)
    {
        if (report.All.IsEmpty)
        {
            return part.Sentence("No transfer is on record that would still be followed.");
        }

        var second = report.All.Where(one => one.IsSecondOverdue).ToList();
        part.Sentence(Phrases.Sentence(Phrases.And([.. Counts(report)])) + ".", Tone.Lead)
            .Sentence(SheetWords.InCalf(report.InCalf, report.All.Select(one => one.Number)))
            .And(Section(report, "Overdue: checked by nobody, and so neither empty nor in calf", FollowState.Overdue))
            .Sentence(second.Count == 0 ? "" : $"Second check overdue: {string.Join(", ", second.Select(one => one.Number))}.")
            .And(Section(report, "To check now", FollowState.ToCheck))
            .And(Section(report, "Too early to check", FollowState.Waiting))
            .Bullets(report.All.Where(one => one is { Returned: not null, State: FollowState.Overdue or FollowState.ToCheck or FollowState.Waiting }).Select(one => FollowWords.Returned(one, report.Today)))
            .Bullets(report.All.Where(one => one is { IsEmptyTooEarly: true, State: FollowState.Overdue or FollowState.ToCheck or FollowState.Waiting }).Select(one => FollowWords.TooEarly(one, report.Today)))
            .Gap().Sentence(report.Of(FollowState.Pregnant).Any() ? Wording.Bold("In calf by the latest test") : "").Table(InCalf(report))
            .Gap().Bullets(report.All.Where(one => one.State is FollowState.Lost or FollowState.Empty or FollowState.Calved).Select(one => FollowWords.Ended(one, report.Today)));
        return part.Sentence("Whether one who is empty may be used again, draft and why say, by the rules. Until a list says so, she is given nothing.");
    }

    private static IEnumerable<string> Counts(FollowReport report) => report.All.GroupBy(one => one.State).Select(group => $"{group.Count()} {FollowWords.Of(group.Key)}");

    private static DocumentBuilder Section(FollowReport report, string title, FollowState state)
    {
        var checks = Checks(report, "Checks and their days", report.Of(state));
        return new DocumentBuilder().Gap().Sentence(checks.IsEmpty ? "" : Wording.Bold(title)).Table(checks);
    }

    private static Table Checks(FollowReport report, string caption, IEnumerable<Followed> all)
    {
        var table = new Table(caption, "done", "number", "tag", "embryo", "day", "return watch", "first check, not by hand", "by hand from", "second check");
        foreach (var one in all)
        {
            table.Add(
                DrawnPage.Box, Wording.Bold(one.Number), Particulars.Tag(report.Draft.Herd, one.Animal), one.Embryo ?? "not named", $"{one.DayOn(report.Today)}", FollowWords.Days(one.Dates.ReturnWatch, report.Today),
                FollowWords.Days(one.Dates.FirstCheck, report.Today), Dates.Long(one.Dates.ClearedByHandFrom, report.Today.Year), FollowWords.Days(one.Dates.SecondCheck, report.Today));
        }

        return table;
    }

    private static Table InCalf(FollowReport report)
    {
        var table = new Table("From check to calving", "number", "tag", "embryo", "day", "found", "second check", "dry off", "due", "long from: call the vet");
        foreach (var one in report.Of(FollowState.Pregnant).OrderBy(one => one.Dates.Due))
        {
            table.Add(
                Wording.Bold(one.Number), Particulars.Tag(report.Draft.Herd, one.Animal), one.Embryo ?? "not named", $"{one.DayOn(report.Today)}", Dates.Long(one.Tested!.Value, report.Today.Year),
                one.Tested >= one.Dates.SecondCheck.Start ? "done" : FollowWords.Days(one.Dates.SecondCheck, report.Today), FollowWords.Day(one.Dates.DryOff), FollowWords.Due(one.Dates), FollowWords.Day(one.Dates.LongFrom));
        }

        return table;
    }
}
