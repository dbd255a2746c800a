namespace Byrelaw.Planning.Budgeting;

/// <summary>What stopping a session on a day still costs, by the prices that the programme gives and the days on which each falls.</summary>
/// <param name="Money">What is still paid although nothing more is done.</param>
/// <param name="IsAll">Whether all of it has a price; else it is at least so much.</param>
/// <param name="Lost">Money not earned: each animal that is begun loses a cycle. Null where nobody is begun by then, or a lost cycle has no price.</param>
public sealed record StillCosts(Money Money, bool IsAll, Money? Lost)
{
    /// <summary>Adds it up: a team that comes that very day, and after a collection the embryos that the laboratory makes, with the freezing of those that are fit for it.</summary>
    /// <returns>Null where the programme gives no price at all, or the session is over.</returns>
    public static StillCosts? Of(Plan plan, int session, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var plans = plan.Draft.Rulebook.Plans;
        var place = plan.Sessions.ToList().FindIndex(one => one.Number == session);
        if (Charges.Currency(plan.Inputs) is not { Length: > 0 } currency || place < 0)
        {
            return null;
        }

        var (named, collection) = (plan.Sessions[place], plan.Sessions[place].Session.Days.Collection);
        var (sum, isAll) = (0.0, true);
        if (collection == day || named.Session.Days.FirstTransfer == day)
        {
            Add(plans.Cost(CostUnit.Visit), 1);
        }

        // With one all-in price nothing is paid where nothing is transferred.
        if (collection < day && plans.Cost(CostUnit.EmbryoTransferred) is null && plan.Numbers.Forecast is { } forecast && plan.Season.NumbersNamed.IndexOf(session) is >= 0 and var meeting && meeting < forecast.Sessions.Length)
        {
            var embryos = forecast.Sessions[meeting].Embryos.Mean;
            if (plan.Inputs.Aims.Embryos == EmbryoOrigin.CollectedEggs)
            {
                Add(plans.Cost(CostUnit.Embryo), embryos);
            }

            if (InVain.FitToFreeze(plan.Inputs) is { } fit)
            {
                Add(plans.Cost(CostUnit.EmbryoFrozen), embryos * fit.Share);
            }
        }

        var begun = named.Named.Count(animal => animal.Start < day && plans.Method(animal.Method) is { IsNatural: false });
        return new(new Money(sum, currency), isAll, begun > 0 && plans.Cost(CostUnit.LostCycle)?.Amount is { } cycle ? cycle with { Amount = begun * cycle.Amount } : null);

        void Add(CostLine? line, double times)
        {
            sum += (line?.Amount.Amount ?? 0) * times;
            isAll &= line is not null || times <= 0;
        }
    }
}
