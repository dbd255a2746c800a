namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds which sessions the farm's own file gives up.</summary>
/// <param name="sessions">How many sessions the programme has.</param>
/// <param name="until">What is agreed on a later day is not in force; null where nobody says what day it is.</param>
internal sealed class StoppedBinder(int sessions, LocalDate? until)
{
    /// <summary>All of them, in the order of writing.</summary>
    public ImmutableArray<StoppedSession> Bind(IEnumerable<RuleFile> files)
    {
        var stopped = ImmutableArray.CreateBuilder<StoppedSession>();
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block.Head is StoppedLine))
            {
                if (!file.IsRoot)
                {
                    file.Problems.Add(FileProblems.UsedFileHolds(block.Span, "stopped"));
                }
                else if (Bind(block, file.Problems) is { } one)
                {
                    stopped.Add(one);
                }
            }
        }

        return [.. stopped.Where(one => !(one.Agreement.On > until))];
    }

    private StoppedSession? Bind(Block block, List<Diagnostic> problems)
    {
        var session = ((StoppedLine)block.Head!).Session;
        if (session.Value < 1 || session.Value > sessions || session.Value != Math.Floor(session.Value))
        {
            problems.Add(BookingProblems.NoSuchSession(session.Span, sessions));
            return null;
        }

        var (because, agreed) = (block.First<BecauseLine>(), block.First<AgreedByLine>());
        if (because is null || agreed is null)
        {
            if (!block.IsBroken)
            {
                problems.Add(TaskProblems.StoppedWithout(block.Head!.Span, why: because is null));
            }

            return null;
        }

        return new StoppedSession((int)session.Value, because.Reason.Value, new Agreement([.. agreed.By.Select(by => by.Value)], agreed.On.Value), block.Span);
    }
}
