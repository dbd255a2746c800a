namespace Byrelaw.Reporting.Pages;

/// <summary>Both checks of an animal at each session, as cards.</summary>
internal static class HerSessions
{
    public static Cards Of(HerReports her) => new("At each session", [.. her.All.GroupBy(report => report.On.List.Session).Select(Card)]);

    private static Card Card(IGrouping<int?, AnimalReport> session) =>
        new(session.Key is { } number ? $"Session {number}" : "On the judging days", [.. session.OrderBy(report => report.On.List.Choice.JudgedFrom).Select(Fact)]);

    private static (string Name, Wording Says) Fact(AnimalReport report)
    {
        var reason = report.Animal.Answer.MayBeUsed() ? report.Animal.ReadyUntil is { } until ? $"holds to {report.On.Short(until)}" : "" : Reason.Of(report);
        return ($"{Name(report)} {report.On.Short(report.On.List.Choice.JudgedFrom)}", $"{Wording.Answer(report.Animal.Answer, report.On.Use)} {Wording.Danger(report.Animal.InCalf)} {reason}");
    }

    /// <summary>What the check is for: <c>Hormone</c>, <c>Embryo</c>; any other list by its name.</summary>
    private static string Name(AnimalReport report) => report.On.Rulebook.Programme is not { } programme ? Phrases.Sentence(report.On.Name)
        : ProgrammeLists.Treatment(programme)?.List == report.On.Name ? "Hormone"
        : ProgrammeLists.Recipients(programme)?.List == report.On.Name ? "Embryo"
        : Phrases.Sentence(report.On.Name);
}
