namespace Byrelaw.Language.Binding.Plans;

/// <summary>
/// Binds the statements of a plan that may stand in any file, through the layers. A block that could not be read is told and left out:
/// a plan is not drawn up from files with errors.
/// </summary>
internal sealed class PlanBinder(Namespace names, RuleBinder rules, IReadOnlyList<DefineEntry> defines)
{
    private const string Because = "add `because \"...\"`";

    private readonly Layered<Caution> _cautions = new("add `source \"...\"`");
    private readonly Layered<Method> _methods = new(Because);
    private readonly Layered<PlanTask> _tasks = new(Because);
    private readonly Layered<object> _assumptions = new("say what it rests on: a count, a weight, `because \"...\"` or `source \"...\"`");

    /// <summary>Binds all files, each after those it uses.</summary>
    public PlanStatements Bind(IReadOnlyList<RuleFile> files, ImmutableArray<Visits> visits)
    {
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block.Head is not null))
            {
                Bind(new Context(names, file.Problems), file, block);
            }
        }

        ImmutableArray<Caution> cautions = [.. _cautions.Resolve()];
        var said = _assumptions.Resolve().ToList();
        var plans = new PlanStatements
        {
            Cautions = cautions,
            Methods = [.. _methods.Resolve().Select(method => method with { Steps = [.. method.Steps.Select(step => step with { Cautions = About(cautions, step.Text) })] })],
            Visits = visits,
            Assumptions = [.. said.OfType<Assumption>()],
            Costs = [.. said.OfType<CostLine>()],
            Tasks = [.. _tasks.Resolve().Select(task => task with { Cautions = About(cautions, task.Name) })],
        };
        CheckTogether(plans, files);
        CheckCostsOfMethods(plans, files);
        return plans;
    }

    private void Bind(Context context, RuleFile file, Block block)
    {
        switch (block.Kind)
        {
            case BlockKind.Caution:
                var line = (CautionLine)block.Head!;
                var source = block.First<SourceLine>()?.Source.Value;
                _cautions.Add(line.About.Text, file, block.Span, source is not null, new Caution(line.About.Text, line.Text.Value, source, block.Span));
                break;
            case BlockKind.Method:
                var method = new MethodBinder(context, block, defines).Bind();
                _methods.Add(method.Name, file, block.Span, method.Because is not null, method);
                break;
            case BlockKind.Task when new TaskBinder(context, rules, block).Bind() is { } task:
                _tasks.Add(task.Name, file, block.Span, task.Because is not null, task);
                break;
            case BlockKind.Assume:
                var assumption = new AssumptionBinder(context, file, block);
                if (assumption.Bind() is var (words, value))
                {
                    _assumptions.Add(words, file, block.Span, assumption.HasReason || value is CostLine, value);
                }

                break;
            default:
                break;
        }
    }

    /// <summary>A caution goes with every text that has its word in it, so that none can be forgotten.</summary>
    private static ImmutableArray<Caution> About(ImmutableArray<Caution> cautions, string text)
    {
        var folded = NameFolding.Fold(text);
        return [.. cautions.Where(caution => folded.Contains(NameFolding.Fold(caution.About), StringComparison.Ordinal))];
    }

    private static void CheckTogether(PlanStatements plans, IReadOnlyList<RuleFile> files)
    {
        var allIn = plans.Cost(CostUnit.EmbryoTransferred);
        var itemised = plans.Costs.FirstOrDefault(line => line.IsItemised);
        if (allIn is not null && itemised is not null)
        {
            ProblemsOf(files, allIn.Span).Add(AssumeProblems.AllInAndItemised(allIn.Span, QuantityTable.Words(itemised.Per), itemised.Span));
        }

        var whole = plans.Assumptions.FirstOrDefault(one => one.Quantity == AssumedQuantity.KeptFromFirstCheckToCalving);
        var step = plans.Assumptions.FirstOrDefault(one => one.Quantity is AssumedQuantity.KeptFromFirstToSecondCheck or AssumedQuantity.KeptFromSecondCheckToCalving);
        if (whole is not null && step is not null)
        {
            ProblemsOf(files, step.Span).Add(AssumeProblems.KeptTwice(step.Span, whole.Span));
        }
    }

    /// <summary>A cost of a method that nobody declares would stand in no budget. Prices alone, with no methods at all, may wait for a file that has them.</summary>
    private static void CheckCostsOfMethods(PlanStatements plans, IReadOnlyList<RuleFile> files)
    {
        if (plans.Methods.IsEmpty)
        {
            return;
        }

        foreach (var (file, name) in files.SelectMany(file => file.Blocks.Select(block => (file, (block.Head as AssumeLine)?.Method))))
        {
            if (name is not null && plans.Method(name.Value) is null)
            {
                file.Problems.Add(AimProblems.UnknownMethod(name.Span, name.Value, [.. plans.Methods.Select(method => method.Name)]));
            }
        }
    }

    /// <summary>The problems of the file that a place is in.</summary>
    public static List<Diagnostic> ProblemsOf(IReadOnlyList<RuleFile> files, Sources.SourceSpan at) => files.First(file => file.Source == at.File).Problems;
}
