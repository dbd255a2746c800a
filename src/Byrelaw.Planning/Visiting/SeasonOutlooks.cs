namespace Byrelaw.Planning.Visiting;

/// <summary>What comes of each visit, by the season's numbers.</summary>
public sealed class SeasonOutlooks : IOutlook
{
    /// <inheritdoc/>
    public Outlook? Of(Rulebook rulebook, int donors, int recipients)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var (programme, plans) = (rulebook.Programme!, rulebook.Plans);
        var rounds = Round.Of(programme);
        if (rounds.IsEmpty)
        {
            return null;
        }

        var treatments = PlanCalendar.Methods(plans, programme.Aims).Select(method => TreatmentCalendar.Of(method, rounds[0]));
        var inputs = new SeasonInputs
        {
            Plans = plans,
            Aims = programme.Aims,
            Donors = donors,
            MostDonors = donors,
            Sessions = rounds.Length,
            MostSessions = rounds.Length,
            Serving = [.. treatments.Select(JudgedSeason.Serving)],
            OnHand = new(0, recipients, 0, 0),
            Visits = 2 * rounds.Length,
        };
        if (SeasonPlanner.Outlook(inputs) is not { } season)
        {
            return null;
        }

        var goal = season.Forecast.Chain.Goal;
        var currency = programme.Aims.Budget?.Currency ?? plans.Costs.Select(line => line.Amount.Currency).FirstOrDefault();
        return new(
            goal is null ? season.Forecast.Stages[^1].Counts.Mean : season.Forecast.At(goal.Of).Mean, season.Forecast.Chance,
            currency is null || season.Lines.IsEmpty ? null : new Money(season.Cost, currency));
    }
}
