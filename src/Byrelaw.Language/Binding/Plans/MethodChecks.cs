namespace Byrelaw.Language.Binding.Plans;

/// <summary>Whether the lines of a method make sense together.</summary>
internal static class MethodChecks
{
    /// <summary>Tells what does not.</summary>
    public static void Check(Context context, Block block, Method method)
    {
        var problems = context.Problems;
        if (method.Steps.IsEmpty && !method.IsNatural)
        {
            problems.Add(MethodProblems.DoesNothing(block.Span));
        }
        else if (method.IsNatural)
        {
            problems.AddRange(block.Lines.Where(line => line is StepLine or CountsAsHeatLine or InHeatLine or AgainLine or FlushedLine)
                .Select(line => MethodProblems.TreatsNaturalHeat(line.Span)));
        }
        else
        {
            CheckHeat(problems, block, method);
        }

        CheckFlush(problems, block, method);
        CheckDevice(problems, block);
        problems.AddRange(block.Lines.OfType<OnTheDayLine>().Select(line => MethodProblems.ChosenBeforeTheDay(line.Span)));
        if (method.Because is null && method.Source is null)
        {
            problems.Add(PlanProblems.NoReason(block.Span, "method"));
        }
    }

    private static void CheckHeat(List<Diagnostic> problems, Block block, Method method)
    {
        var (counts, spread) = (block.First<CountsAsHeatLine>(), block.First<InHeatLine>());
        if (counts is not null && spread is not null)
        {
            problems.Add(MethodProblems.TwoHeats(spread.Span));
        }
        else if (counts is null && (spread is null || method.InHeat is { Days.IsEmpty: true }))
        {
            problems.Add(MethodProblems.NoHeat(spread?.Span ?? block.Span));
        }

        var first = method.Steps[0].Day;
        if (counts is not null && method.HeatDay <= first)
        {
            problems.Add(MethodProblems.HeatBeforeTreatment(counts.Span, first));
        }

        if (spread?.Share.Evidence.OfType<OnDaySyntax>().FirstOrDefault(one => one.Day.Value <= first && one.Percent.Value > 0) is { } early)
        {
            problems.Add(MethodProblems.HeatBeforeTreatment(early.Span, first));
        }

        if (block.First<AgainLine>() is { } again && method.Again is { } chance)
        {
            if (chance.NotSeenBy >= chance.From || chance.From > chance.To)
            {
                problems.Add(MethodProblems.AgainOutOfOrder(again.Span, again.From.Span.To(again.To?.Span ?? again.From.Span)));
            }
            else if (spread is null)
            {
                problems.Add(MethodProblems.AgainWithoutHeats(again.Span));
            }
        }
    }

    /// <summary>What goes in comes out, each in a step of its own.</summary>
    private static void CheckDevice(List<Diagnostic> problems, Block block)
    {
        StepLine? isIn = null;
        foreach (var line in block.Lines.OfType<StepLine>().Where(line => line.Device is not null))
        {
            if (line.Device == DeviceMove.In == (isIn is not null))
            {
                problems.Add(MethodProblems.DeviceWithoutOther(isIn?.Span ?? line.Span, goesIn: isIn is not null));
            }

            isIn = line.Device == DeviceMove.In ? line : null;
        }

        if (isIn is not null)
        {
            problems.Add(MethodProblems.DeviceWithoutOther(isIn.Span, goesIn: true));
        }
    }

    private static void CheckFlush(List<Diagnostic> problems, Block block, Method method)
    {
        if (!method.IsForDonors && block.First<FlushedLine>() is { } flushed)
        {
            problems.Add(MethodProblems.FlushOnlyForDonors(flushed.Span));
        }
        else if (method.IsForDonors && (method.FlushDay is not { } day || day <= method.HeatDay))
        {
            var late = block.First<FlushedLine>();
            problems.Add(MethodProblems.FlushMissing(late?.Span ?? block.Span, late is null ? null : method.HeatDay));
        }
    }
}
