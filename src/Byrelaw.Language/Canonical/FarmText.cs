namespace Byrelaw.Language.Canonical;

/// <summary>A programme, and what a farm says of its records, the one way; without the folder, which is a path.</summary>
internal static class FarmText
{
    private const int MostTransferDays = 60;

    /// <summary>The <c>records</c> block.</summary>
    public static string Of(RecordKeeping records) => RuleText.Block("records",
    [
        records.UpTo is { } day ? $"up to {NumberText.Of(day)}" : null,
        .. records.Complete.Select(Of).Order(StringComparer.Ordinal),
        .. records.Compared.Select(Of).Order(StringComparer.Ordinal),
        .. records.Blanks.Select(blank => $"{NameText.Exact(blank.Kind.Details[blank.Place].Name)} of {NameText.Exact(blank.Kind.Name)} is {NameText.Exact(blank.Value)}").Order(StringComparer.Ordinal),
        .. records.LeaveOut.GroupBy(word => word.IsNot?.Name).OrderBy(words => words.Key, StringComparer.Ordinal).Select(words =>
            $"leave out {Names(words.Select(word => word.Word))}" + (words.Key is { } kind ? $", which is not {NameText.Exact(kind)}" : "")),
    ]);

    /// <summary>The <c>programme</c> block.</summary>
    public static string Of(Programme programme) => RuleText.Block(
        $"programme {NameText.Text(programme.Name)}", [.. Dates(programme), .. AimText.Of(programme.Aims), .. programme.Choices.Select(Of)]);

    private static IEnumerable<string> Dates(Programme programme)
    {
        var (first, final) = (programme.Date("first transfer"), programme.Date("final transfer"));
        var days = first is { } a && final is { } b ? Period.DaysBetween(a, b) + 1 : 0;
        var isOneLine = days is >= 1 and <= MostTransferDays;
        foreach (var date in programme.Dates)
        {
            switch (NameFolding.Fold(date.Name))
            {
                case "collection":
                    yield return AimText.Collection(programme)!;
                    break;
                case "first transfer" when isOneLine:
                    yield return $"transfer {Day(date)}" + (days == 1 ? "" : $", over {NumberText.Of(days)} days");
                    break;
                case "final transfer" when isOneLine:
                    break;
                default:
                    yield return $"date {NameText.Exact(date.Name)} {(date.From is { Wait.Count: 0, Name: { } name } ? $"0 days after {NameText.Exact(name)}" : Day(date))}";
                    break;
            }
        }
    }

    /// <summary>A date that is reckoned from another moves with it, so it is said as it was.</summary>
    private static string Day(ProgrammeDate date) => PlanText.Of(date.From ?? new DayReference(date.Date, null, default, false, date.Span));

    private static string Of(Completeness complete)
    {
        var kinds = Names(complete.Kinds.Select(kind => kind.Name));
        var line = complete.IsNone
            ? $"no {kinds} on this farm" + (complete.Since == Completeness.Always ? "" : $" since {NumberText.Of(complete.Since)}")
            : $"complete for {kinds} since {NumberText.Of(complete.Since)}" + (complete.Until is { } until ? $" until {NumberText.Of(until)}" : "");
        return string.Join("\n    ", RuleText.Reasons(complete.Because, null, complete.Agreement).OfType<string>().Prepend(line));
    }

    private static string Of(ComparedNumbers compared)
    {
        // Of numbers that are one animal's the first is the one she goes by; of others the order says nothing.
        var numbers = compared.AreOne ? compared.Numbers.AsEnumerable() : compared.Numbers.Order(StringComparer.Ordinal);
        var line = $"{(compared.AreOne ? "same animal" : "not the same animal")} {string.Join(", ", numbers.Select(NameText.Text))}";
        return string.Join("\n    ", RuleText.Reasons(compared.Because, null, compared.Agreement).OfType<string>().Prepend(line));
    }

    private static string Of(Choice choice)
    {
        var from = choice.From switch
        {
            ChoiceFrom.Named => string.Join(", ", choice.Animals.Select(NameText.Text)),
            ChoiceFrom.AnotherList => choice.OtherList!,
            var group => group.ToString().ToLowerInvariant(),
        };
        var (first, last) = (Day(choice.FromDate, choice.JudgedFrom), Day(choice.ToDate, choice.JudgedTo));
        var days = choice.JudgedFrom == choice.JudgedTo && choice.ToDate is null ? $"on {first}" : $"from {first} to {last}";
        var use = choice.Use switch { ListUse.NothingGiven => ", nothing given", ListUse.ForLookingOnly => ", for looking only", _ => "" };
        return $"choose {choice.List} from {from}, judged {days}{use}";
    }

    private static string Day(string? name, LocalDate day) => name is null ? NumberText.Of(day) : NameText.Exact(name);

    private static string Names(IEnumerable<string> names) => string.Join(", ", NameText.Sorted(names).Select(NameText.Exact));
}
