namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds one <c>method</c>.</summary>
internal sealed class MethodBinder(Context context, Block block, IReadOnlyList<DefineEntry> defines)
{
    /// <summary>No programme of treatments is longer.</summary>
    private const int MostDays = 120;

    /// <summary>The method with what could be read of it.</summary>
    public Method Bind()
    {
        var again = block.First<AgainLine>();
        var method = new Method
        {
            Name = ((MethodLine)block.Head!).Name.Value,
            IsForDonors = IsForDonors(),
            Suits = Suits(),
            Steps = Steps(),
            HeatDay = block.First<CountsAsHeatLine>() is { } heat ? Day(heat.Day) : null,
            InHeat = block.First<InHeatLine>() is { } inHeat ? Heats(inHeat.Share) : null,
            CycleDays = block.First<CyclesLine>() is { } cycles ? context.WholeDays(cycles.Every, 17, 25, "days of a cycle") : null,
            HeatSeen = block.First<HeatSeenLine>() is { } seen ? context.Share(seen.Share) : null,
            Accepted = block.First<AcceptedLine>() is { } accepted ? context.Share(accepted.Share) : null,
            Again = again is not null && Day(again.NotSeenBy) is { } by && Day(again.From) is { } from && (again.To is null ? from : Day(again.To)) is { } to
                ? new SecondChance(by, from, to) : null,
            FlushDay = block.First<FlushedLine>() is { } flushed ? Day(flushed.Day) : null,
            Cost = Cost(),
            Because = block.First<BecauseLine>()?.Reason.Value,
            Source = block.First<SourceLine>()?.Source.Value,
            Span = block.Span,
        };
        if (!block.IsBroken)
        {
            MethodChecks.Check(context, block, method);
        }

        return method;
    }

    /// <summary>Whom it suits; where that cannot be read nobody knows of anyone.</summary>
    private Condition? Suits() => context.Condition(block) switch
    {
        { } condition when !block.IsBroken && !BrokenConditions.IsBroken(condition, defines) => condition,
        null when !block.IsBroken => null,
        _ => new BrokenCondition { Span = block.Span },
    };

    private bool IsForDonors()
    {
        if (block.First<ForLine>() is not { } line)
        {
            return false;
        }

        var list = NameFolding.Fold(line.List.Text);
        if (list != "donors")
        {
            context.Problems.Add(MethodProblems.OnlyForDonors(line.List.Span, line.Span));
        }

        return list != "recipients";
    }

    private ImmutableArray<MethodStep> Steps()
    {
        var steps = ImmutableArray.CreateBuilder<MethodStep>();
        foreach (var line in block.Lines.OfType<StepLine>())
        {
            if (Day(line.Day) is not { } day)
            {
                continue;
            }

            var step = new MethodStep(day, line.Part, line.Text.Value, null, [], line.Span) { Device = line.Device };
            if (steps.Count == 0 ? day != 0 : Hour(step) < Hour(steps[^1]))
            {
                context.Problems.Add(MethodProblems.StepsOutOfOrder(line.Day.Span, steps.Count == 0 ? null : NumberText.Of(steps[^1].Day)));
            }

            steps.Add(step with { After = After(line, step, steps) });
        }

        return steps.ToImmutable();
    }

    /// <summary>Hours between steps must fit their days, give or take half a day where no part of the day is said.</summary>
    private HoursAfter? After(StepLine line, MethodStep step, IReadOnlyList<MethodStep> earlier)
    {
        if (line.Hours is null || context.Whole(line.Hours, 1, 24 * MostDays, "hours") is not { } hours || Day(line.AfterDay!) is not { } day)
        {
            return null;
        }

        var from = earlier.LastOrDefault(one => one.Day == day);
        var play = from?.Part is null || step.Part is null ? 18 : 8;
        var between = from is null ? 0 : Hour(step) - Hour(from);
        if (from is null || Math.Abs(between - hours) > play)
        {
            context.Problems.Add(MethodProblems.HoursDisagree(line.Hours.Span.To(line.AfterDay!.Span), line.Hours.Span, from is null ? null : between));
            return null;
        }

        return new HoursAfter(hours, day);
    }

    private static int Hour(MethodStep step) => (24 * step.Day) + (step.Part == DayPart.Evening ? 12 : 0);

    private HeatSpread? Heats(ShareSyntax syntax)
    {
        var days = syntax.Evidence.OfType<OnDaySyntax>().ToList();
        var bound = ImmutableArray.CreateBuilder<(int Day, double Share)>();
        foreach (var one in days)
        {
            if (one.Percent.Value is < 0 or > 100)
            {
                context.Problems.Add(PlanProblems.NotAShare(one.Percent.Span));
            }
            else if (Day(one.Day) is { } day)
            {
                bound.Add((day, one.Percent.Value / 100));
            }
        }

        var sum = bound.Sum(day => day.Share);
        if (days.Count > 0 && bound.Count == days.Count && Math.Abs(sum - 1) > 1e-6)
        {
            context.Problems.Add(MethodProblems.SpreadSum(days[0].Span.To(days[^1].Span), 100 * sum));
        }

        return context.Share(syntax) is { } share ? new HeatSpread(share, [.. bound.OrderBy(day => day.Day)]) : null;
    }

    private Money? Cost()
    {
        if (block.First<CostsLine>() is not { } line)
        {
            return null;
        }

        if (line.Per is null || NameFolding.Fold(line.Per.Text) != "animal treated")
        {
            context.Problems.Add(TaskProblems.UnknownCost(
                line.Per?.Span ?? line.Span, line.Per is not null, "a method costs so much `per animal treated`", "animal treated"));
        }

        return context.Money(line.Amount);
    }

    private int? Day(NumberSyntax number) => context.Whole(number, 0, MostDays, "a day of the method");
}
