namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds one <c>task</c>.</summary>
internal sealed class TaskBinder(Context context, RuleBinder rules, Block block)
{
    /// <summary>The task; null where its day could not be read.</summary>
    public PlanTask? Bind()
    {
        var isNotNeeded = block.First<NotNeededLine>() is not null;
        var because = block.First<BecauseLine>()?.Reason.Value;
        var due = block.First<DueLine>() is { } line ? context.Day(line.Day) : null;
        if (!block.IsBroken)
        {
            Check(isNotNeeded, because);
        }

        if (due is null && !isNotNeeded && block.First<SettlesLine>() is null)
        {
            return null;
        }

        var settled = block.Lines.OfType<SettlesLine>().SelectMany(settles => settles.What).ToList();
        return new PlanTask
        {
            Name = ((TaskLine)block.Head!).Name.Value,
            List = block.First<ForLine>() is { } list ? List(list) : null,
            EachSession = block.First<EachSessionLine>() is not null,
            Due = due,
            DecidedBy = [.. block.First<DecidedByLine>()?.Who.Select(who => who.Value) ?? []],
            IfStopped = block.First<IfStoppedLine>()?.What.Value,
            NotBefore = block.First<NotBeforeLine>() is { } early ? context.Day(early.Day) : null,
            ResultsTake = block.First<ResultsTakeLine>() is { } results ? Days(results.Length) : null,
            Takes = block.First<TakesLine>() is { } takes ? Days(takes.Length) : null,
            SettlesRules = [.. settled.OfType<TextSyntax>().Select(Rule).OfType<string>().Distinct()],
            SettlesKinds = context.Kinds([.. settled.OfType<NameSyntax>()]) ?? [],
            Cost = block.First<CostsLine>() is { } costs ? Cost(costs) : null,
            IsNotNeeded = isNotNeeded,
            Because = because,
            Source = block.First<SourceLine>()?.Source.Value,
            Span = block.Span,
        };
    }

    /// <summary>Tells of a task that cannot be in time whatever the programme's dates are, or is not in time with these.</summary>
    public static void CheckDays(PlanTask task, Programme? programme, IEnumerable<Rule> rules, List<Diagnostic> problems)
    {
        if (task.IsNotNeeded)
        {
            return;
        }

        if (programme is not null && task.Due?.In(programme) is { } due)
        {
            foreach (var rule in rules.Where(rule => task.SettlesRules.Contains(rule.Name)))
            {
                if (programme.Choices.FirstOrDefault(choice => rule.IsFor(choice.List)) is { } choice && choice.JudgedTo < due)
                {
                    problems.Add(TaskProblems.DueAfterNeeded(task.Due!.Span, NumberText.Of(due), rule.Name, NumberText.Of(choice.JudgedTo)));
                }
            }
        }

        if (task.Due is not { } day)
        {
            return;
        }

        var (last, first) = (On(day, task.NotBefore, programme)?.PlusDays(-task.LeadDays), task.NotBefore is null ? null : On(task.NotBefore, day, programme));
        if (last < first)
        {
            problems.Add(TaskProblems.TooLateByConstruction(task.Span, Period.DaysBetween(last.Value, first.Value)));
        }
    }

    /// <summary>The day; where the programme does not set it and two are reckoned from the same date, any day stands in for that.</summary>
    private static LocalDate? On(DayReference day, DayReference? other, Programme? programme) =>
        (programme is null ? day.Date : day.In(programme)) ?? (day.Name is not null && day.Name == other?.Name ? day.From(new LocalDate(2001, 7, 1)) : null);

    private void Check(bool isNotNeeded, string? because)
    {
        if (isNotNeeded)
        {
            if (because is null)
            {
                context.Problems.Add(TaskProblems.NotNeededWithoutReason(block.Span));
            }
        }
        else if (block.First<DueLine>() is null && block.First<SettlesLine>() is null)
        {
            context.Problems.Add(TaskProblems.NoDue(block.Span));
        }
        else if (block.First<DecidedByLine>() is null != block.First<IfStoppedLine>() is null)
        {
            context.Problems.Add(TaskProblems.HalfADecision(block.First<DecidedByLine>()?.Span ?? block.First<IfStoppedLine>()!.Span, isDecided: block.First<DecidedByLine>() is not null));
        }
        else if (because is null && block.First<SourceLine>() is null)
        {
            context.Problems.Add(PlanProblems.NoReason(block.Span, "task"));
        }
    }

    /// <summary>The list's declared spelling. Base tasks may be for lists that a farm does not draw up.</summary>
    private string List(ForLine line) => rules.FindList(line.List.Text) ?? line.List.Text;

    private string? Rule(TextSyntax name)
    {
        if (rules.Find(name.Value) is { } entry)
        {
            return entry.Name;
        }

        return context.Fail<string>(TaskProblems.UnknownRule(name.Span, name.Value, rules.Nearest(name.Value)?.Name));
    }

    private TimeLength? Days(DurationSyntax length) =>
        context.WholeDays(length, 0, 1000, "how long it takes") is { } ? context.Length(length) : null;

    private TaskCost? Cost(CostsLine line)
    {
        var per = line.Per is null ? "" : NameFolding.Fold(line.Per.Text);
        if (per is not ("" or "animal" or "sample"))
        {
            context.Problems.Add(TaskProblems.UnknownCost(line.Per!.Span, true, "a task costs so much, or so much `per animal` or `per sample`", "animal"));
        }

        return context.Money(line.Amount) is { } amount ? new TaskCost(amount, per.Length > 0) : null;
    }
}
