namespace Byrelaw.Planning.Visiting;

/// <summary>What comes of each visit, by the season's numbers.</summary>
public sealed class SeasonOutlooks : IOutlook
{
    /// <inheritdoc/>
    public Outlook? Of(Rulebook rulebook, SeasonInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        if (SeasonPlanner.Outlook(inputs) is not { } season)
        {
            return null;
        }

        var goal = season.Forecast.Chain.Goal;
        return new(
            goal is null ? season.Forecast.Stages[^1].Counts.Mean : season.Forecast.At(goal.Of).Mean, season.Forecast.Chance,
            season.Lines.IsEmpty ? null : new Money(season.Cost, Charges.Currency(inputs)), season.IsAtLeast);
    }
}
