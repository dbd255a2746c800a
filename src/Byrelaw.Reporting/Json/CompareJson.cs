using Byrelaw.Reporting.Comparing;

namespace Byrelaw.Reporting.Json;

/// <summary>Two rulebooks compared, for programs. Keys are stable; a value that is not there is null.</summary>
public sealed record CompareJson(
    string Old, string New, string ComparedWith, string OldRulebook, string NewRulebook, bool Same,
    IReadOnlyList<DifferenceJson> Differences, string? Records, IReadOnlyList<CauseJson>? Animals, IReadOnlyList<MadeUpJson> MadeUp)
{
    /// <summary>The same facts as the page.</summary>
    public static string Of(ComparisonReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return SeenJson.Of(
            new CompareJson(
                report.OldFile, report.NewFile, JudgedWith.NameAndVersion, Fingerprint.Of(report.Rules.Old), Fingerprint.Of(report.Rules.New),
                report.Rules.IsEmpty, [.. report.Rules.Differences.Select(DifferenceJson.Of)], report.Herd?.New.Herd.Fingerprint,
                report.Herd is { } herd ? [.. herd.Groups.Select(group => CauseJson.Of(group, herd))] : null,
                [.. report.MadeUp.Select(MadeUpJson.Of)]),
            JsonShapes.Readable.CompareJson);
    }
}

/// <summary>A made-up animal that shows what a change does.</summary>
public sealed record MadeUpJson(string Rule, string Day, string Born, IReadOnlyDictionary<string, string> Facts, IReadOnlyList<MadeUpRowJson> Rows, string Old, string New)
{
    internal static MadeUpJson Of(BoundaryAnimal animal) => new(
        animal.Rule, LocalDatePattern.Iso.Format(animal.Day), animal.Animal.Born, new SortedDictionary<string, string>(animal.Animal.Facts, StringComparer.Ordinal),
        [.. animal.Rows.Select(row => new MadeUpRowJson(LocalDatePattern.Iso.Format(row.Date), row.Kind, row.Value, row.Unit))],
        Keys.Snake($"{animal.Old}"), Keys.Snake($"{animal.New}"));
}

/// <summary>What is on record of her.</summary>
public sealed record MadeUpRowJson(string Date, string Kind, string Value, string Unit);

/// <summary>One difference.</summary>
public sealed record DifferenceJson(
    string What, string Name, string? OldName, string? NewName, string Happened, string Sameness, string? Animal,
    IReadOnlyList<string>? Touches, IReadOnlyList<DetailJson> Details, string Words)
{
    internal static DifferenceJson Of(Difference difference) => new(
        KeyOf(difference), difference.Name, difference.OldName, difference.NewName, Keys.Snake($"{difference.Happened}"), Keys.Snake($"{difference.Sameness}"),
        (difference as WaiverDifference)?.Animal, difference is DefineDifference define ? [.. define.Touches] : null,
        [.. difference.Details.Select(detail => new DetailJson(Keys.Snake($"{detail.Aspect}"), detail.Was, detail.Is, detail.Part))],
        $"{DifferenceWords.Lead(difference)}. {DifferenceWords.Rest(difference)}".TrimEnd());

    internal static string KeyOf(Difference difference) => difference switch
    {
        WordDifference => "word",
        DefineDifference => "define",
        RuleDifference => "rule",
        PreferDifference => "preference",
        WaiverDifference => "waiver",
        RecordsDifference => "records",
        ProgrammeDifference => "programme",
        UnreadDifference => "unread",
        _ => "plan",
    };
}

/// <summary>One thing that differs.</summary>
public sealed record DetailJson(string Aspect, string? Was, string? Is, string? Part);

/// <summary>Animals with one cause: the fewest changes that make the difference.</summary>
public sealed record CauseJson(IReadOnlyList<ChangeJson> Changes, IReadOnlyList<ChangeJson> Instead, IReadOnlyList<AnimalChangeJson> Animals)
{
    internal static CauseJson Of(CauseGroup group, HerdComparison herd) => new(
        [.. group.Cause.Changes.Select((change, place) => ChangeJson.Of(change, group.Cause.Alone[place]))],
        [.. group.Cause.Instead.Select(change => ChangeJson.Of(change, null))],
        [.. group.Animals.Select(animal => new AnimalChangeJson(animal.List, animal.Number, AnswerJson.Of(animal.Old, AnimalWords.Old(animal, herd).Reason), AnswerJson.Of(animal.New, AnimalWords.New(animal, herd).Reason)))]);
}

/// <summary>A change by what it is and its name; whether it changes something of these animals alone, where that was asked.</summary>
public sealed record ChangeJson(string What, string? Name, string? Animal, bool? Alone)
{
    internal static ChangeJson Of(Change change, bool? alone) => new(
        change.Parts[0] is WordDifference ? "words" : DifferenceJson.KeyOf(change.Parts[0]),
        change.Parts[0] is WordDifference ? null : change.Parts[0].Name, (change.Parts[0] as WaiverDifference)?.Animal, alone);
}

/// <summary>One animal before and now; null where the list does not take her.</summary>
public sealed record AnimalChangeJson(string List, string Animal, AnswerJson? Old, AnswerJson? New);

/// <summary>What a rulebook says of her.</summary>
public sealed record AnswerJson(string Answer, string? ReadyFrom, string? ReadyUntil, string? NotBefore, double Score, IReadOnlyList<string> InTheWay, string Reason)
{
    internal static AnswerJson? Of(Judging.Verdicts.AnimalJudgement? judgement, string reason) => judgement is null ? null : new AnswerJson(
        Keys.Of(judgement.Answer), Iso(judgement.ReadyFrom), Iso(judgement.ReadyUntil), Iso(judgement.NotBefore), judgement.Score,
        [.. judgement.Rules.Where(rule => rule.InTheWay).Select(rule => rule.Name)], reason);

    private static string? Iso(NodaTime.LocalDate? date) => date is { } day ? LocalDatePattern.Iso.Format(day) : null;
}
