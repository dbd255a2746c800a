using Byrelaw.Judging.Supposing;
using Byrelaw.Reporting.Causes;

namespace Byrelaw.Reporting.Json;

/// <summary>The same facts as the pages, for programs.</summary>
public static class JsonText
{
    /// <summary>A draft, or a part of one that was cut out of it.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="inputs">What it was drawn up from, where that is to be told.</param>
    /// <param name="supposed">What is supposed to stand in the book, as it was written; null for nothing.</param>
    public static string Of(Draft draft, InputsJson? inputs = null, IReadOnlyList<string>? supposed = null) =>
        SeenJson.Of(Shape(draft, inputs) with { Supposed = supposed is { Count: > 0 } ? supposed : null }, JsonShapes.Readable.DraftJson);

    /// <summary>The same before it is written.</summary>
    internal static DraftJson Shape(Draft draft, InputsJson? inputs) => new(
        draft.Rulebook.Programme?.Name ?? "", JudgedWith.NameAndVersion, Fingerprints.RulebookOf(draft), draft.Herd.Fingerprint,
        ReachWords.Iso(draft.Herd), inputs, DoubtJson.Of(draft), [.. Lists(draft)])
    {
        OpenSheets = Log.LogEntry.OpenNumbers(draft.Herd),
    };

    /// <summary>A draft's lists, made one by one.</summary>
    internal static IEnumerable<ListJson> Lists(Draft draft) => draft.Lists.Select(list => List(new ListReport(draft, list)));

    /// <summary>Problems in files.</summary>
    public static string Of(IEnumerable<Diagnostic> problems) =>
        SeenJson.Of(new ProblemsJson([.. problems.Select(Problem)]), JsonShapes.Readable.ProblemsJson);

    /// <summary>Problems in records, and what of them is doubted.</summary>
    public static string Of(IEnumerable<Diagnostic> problems, Herd herd, IEnumerable<ProblemCause> causes) => SeenJson.Of(
        new RecordsJson(
            [.. problems.Select(Problem)], [.. causes.Select(Cause)], herd.Count, RecordCountsJson.Of(herd, problems), [.. KindJson.Of(herd)], [.. PromisedKindJson.Of(herd)], DoubtJson.Of(herd))
        {
            Embryos = herd.Embryos.Embryos.IsEmpty ? null : [.. EmbryoJson.Of(herd)],
        }, JsonShapes.Readable.RecordsJson);

    /// <summary>Which promises would open how much.</summary>
    public static string Of(IEnumerable<PromiseGains> gains, Herd herd) => SeenJson.Of(new PromisesJson([.. gains.Select(list => PromisesOfListJson.Of(list, herd))]), JsonShapes.Readable.PromisesJson);

    /// <summary>Problems in files, and what of each rule no worked example shows.</summary>
    public static string Of(IEnumerable<Diagnostic> problems, IEnumerable<RuleCoverage> coverage) => SeenJson.Of(
        new CheckJson([.. problems.Select(Problem)], [.. coverage.Select(rule => new CoverageJson(
            rule.Name, rule.List, rule.Span.File.Path, rule.Span.Line, rule.HasExample, rule.NotShown))]),
        JsonShapes.Readable.CheckJson);

    private static ProblemJson Problem(Diagnostic problem) => new(
        problem.Code, problem.Severity == Severity.Error ? "error" : "warning", problem.File, problem.Line, problem.Column,
        problem.Length, problem.Found, problem.Expected, problem.Help, Correction(problem.Correction), problem.Shown?.Split('\n'));

    private static ProblemCauseJson Cause(ProblemCause cause) => new(
        cause.First.Code, cause.First.File, cause.First.Found, cause.First.Help, cause.Rows.Length, cause.Animals, [.. cause.Rows.Take(3).Select(row => row.Problem.Line)], cause.AloneInAsk?.Kept);

    private static CorrectionJson? Correction(Correction? correction) => correction is null ? null : new CorrectionJson(
        correction.Title, [.. correction.Replacements.Select(made => new ReplacementJson(made.File, made.Line, made.Column, made.Length, made.Text))]);

    private static ListJson List(ListReport list) => new(
        list.Name, list.List.Session, Iso(list.List.Choice.JudgedFrom), Iso(list.List.Choice.JudgedTo),
        Counts(list.List),
        [.. list.List.Animals.Select(animal => Animal(animal, list))])
    {
        Planned = list.List.Planned.IsEmpty ? null : [.. list.List.Planned.Select(row => new PlannedJson(Iso(row.Date), row.Animal, row.Kind))],
    };

    internal static CountsJson Counts(ListJudgement list) => new(
        list.Count(Answer.Ready), list.Count(Answer.OnCourse), list.Count(Answer.Later), list.Count(Answer.Ask), list.Count(Answer.No));

    internal static AnimalJson Animal(AnimalJudgement animal, ListReport list) => new(
        animal.Number, Keys.Of(animal.Answer, list.List.Choice.Use), Iso(animal.ReadyFrom), Iso(animal.ReadyUntil), Iso(animal.NotBefore), animal.Score,
        [.. animal.Rules.Where(rule => rule.InTheWay).Select(rule => rule.Name)],
        [.. animal.Settle.Select(missing => Missing(missing, list))],
        [.. animal.ThenAsk.Select(missing => Missing(missing, list))],
        [.. animal.Rules.Select(rule => Rule(rule, list))])
    {
        InCalf = animal.InCalf switch { InCalf.TakeAsInCalf => "take_as_in_calf", InCalf.MayBe => "may_be_in_calf", _ => null },
    };

    private static MissingJson Missing(Missing missing, ListReport list) => new(
        missing.Subject, Keys.Of(missing.Reason), Iso(missing.From), Iso(missing.To), Keys.Of(missing.SettledBy),
        missing.Line > 0 ? MissingWords.Place(missing, list).Line : null, missing.Needed > 0 ? missing.Needed : null);

    private static RuleJson Rule(RuleJudgement rule, ListReport list) => new(
        rule.Name, Keys.Of(rule.Answer), rule.Expected, Iso(rule.TurnsOn ?? rule.ChangesOn), RuleWords.Found(rule, list), Keys.BasisOf(rule),
        [.. RuleWords.Evidence(rule).Select(Evidence)]);

    private static EvidenceJson Evidence(Evidence evidence) =>
        new(evidence.Kind?.Name ?? evidence.Fact ?? "", Iso(evidence.Date), FileWords.Short(evidence.File), evidence.Line) { Cell = evidence.Cell, Details = evidence.Details };

    internal static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string? Iso(LocalDate? date) => date is { } day ? Iso(day) : null;
}
