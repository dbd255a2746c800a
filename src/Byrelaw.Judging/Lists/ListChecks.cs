namespace Byrelaw.Judging.Lists;

/// <summary>One list's rules, asked of one animal after the other: only whether they hold, with no reasons and no look at later days. For one thread.</summary>
public sealed class ListChecks
{
    private readonly ListPlan _plan;

    internal ListChecks(ListPlan plan) => _plan = plan;

    /// <summary>Whether all of it holds over some days in a row: true of whoever is Ready or On course on them, and of nobody else.</summary>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last; not before the first.</param>
    public Truth Of(int animal, LocalDate from, LocalDate to) => Over(_plan.Judged, animal, from, to);

    /// <summary>Whether a rule holds over some days in a row; rules of one name together. Not known where the list has none of that name.</summary>
    /// <param name="rule">Its name.</param>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last; not before the first.</param>
    public Truth Of(string rule, int animal, LocalDate from, LocalDate to)
    {
        var named = Array.FindAll(_plan.Judged, criterion => criterion is RuleCriterion one && one.Rule.Name == rule);
        return named.Length == 0 ? Truth.Unknown : Over(named, animal, from, to);
    }

    private static Truth Over(Criterion[] criteria, int animal, LocalDate from, LocalDate to)
    {
        var together = Kleene.True;
        foreach (var criterion in criteria)
        {
            together &= Concluder.Over(criterion, animal, Day.Number(from), Day.Number(to));
            if (together.Assumed == Truth.False)
            {
                break;
            }
        }

        return together.Assumed;
    }
}
