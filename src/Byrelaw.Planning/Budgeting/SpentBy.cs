namespace Byrelaw.Planning.Budgeting;

/// <summary>What one session has cost before a day, by the prices that the programme gives and the days on which each is spent.</summary>
/// <param name="Money">The sum.</param>
/// <param name="IsAll">Whether everything that is done by then has a price; else it is at least so much.</param>
public sealed record SpentBy(Money Money, bool IsAll)
{
    /// <summary>Adds it up: whoever is named and begun with before that day, and the collection and its embryos if it is before it.</summary>
    /// <returns>Null where the programme gives no price at all, or the session is over.</returns>
    public static SpentBy? Of(Plan plan, int session, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var plans = plan.Draft.Rulebook.Plans;
        if (Charges.Currency(plan.Inputs) is not { Length: > 0 } currency || plan.Sessions.FirstOrDefault(one => one.Number == session) is not { } named)
        {
            return null;
        }

        var (sum, isAll) = (0.0, true);
        foreach (var method in named.Named.Where(animal => animal.Start < day).GroupBy(animal => animal.Method))
        {
            Add(plans.Method(method.Key) is { } known ? plans.CostOf(known)?.Amount : null, method.Count());
        }

        if (named.Session.Days.Collection is { } collection && collection < day)
        {
            Add(plans.Cost(CostUnit.Collection)?.Amount.Amount, named.Session.Collected.Length);
            Add(plans.Cost(CostUnit.Visit)?.Amount.Amount, 1);
        }

        return new(new Money(sum, currency), isAll);

        void Add(double? price, int times)
        {
            sum += (price ?? 0) * times;
            isAll &= price is not null || times == 0;
        }
    }
}
