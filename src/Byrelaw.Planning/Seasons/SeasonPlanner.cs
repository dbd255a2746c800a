namespace Byrelaw.Planning.Seasons;

/// <summary>Works out a season's numbers: embryos and recipients together, what comes of them, and what they cost.</summary>
public static class SeasonPlanner
{
    /// <summary>All numbers of a season.</summary>
    public static SeasonNumbers Plan(SeasonInputs inputs)
    {
        var outline = SeasonOutline.Of(inputs, true);
        if (outline.Forecaster is not { } forecaster)
        {
            return outline.Numbers;
        }

        var forecast = forecaster.Forecast(outline.Numbers.Sessions);
        var numbers = outline.Numbers with { Forecast = forecast, Budget = Cost(inputs, forecast) };
        return forecaster.Chain.Goal is null ? numbers : numbers with
        {
            Worth = Worth.Of(forecaster, numbers.Sessions, forecast),
            Needed = MoreNeeded.Of(forecaster, inputs, numbers),
            Farthest = forecaster.Forecast(MoreNeeded.Everything(inputs, numbers)),
        };
    }

    /// <summary>Only what comes of it and what to pay on average: quick enough for every visit that is compared.</summary>
    /// <returns>Null where the assumptions do not say how many embryos come.</returns>
    public static SeasonOutlook? Outlook(SeasonInputs inputs)
    {
        var outline = SeasonOutline.Of(inputs, false);
        return outline.Forecaster?.Forecast(outline.Numbers.Sessions) is { } forecast
            ? new(forecast, Budgeter.Lines(forecast, Charges.Of(inputs, outline.Numbers.Sessions), InVain.FitToFreeze(inputs)))
            : null;
    }

    private static Budget? Cost(SeasonInputs inputs, Forecast forecast)
    {
        ImmutableArray<Session> sessions = [.. forecast.Sessions.Select(meeting => meeting.Session)];
        var charges = Charges.Of(inputs, sessions);
        return charges.IsEmpty ? null : Budgeter.AddUp(
            forecast, charges, InVain.FitToFreeze(inputs), Charges.Currency(inputs), inputs.Aims.Budget?.Amount, WithoutPrice.Of(inputs, sessions));
    }
}

/// <summary>What comes of a season and what it costs on average.</summary>
/// <param name="Forecast">What comes of it.</param>
/// <param name="Lines">What is paid.</param>
public sealed record SeasonOutlook(Forecast Forecast, ImmutableArray<ExpectedCharge> Lines)
{
    /// <summary>To pay on average.</summary>
    public double Cost => Lines.Sum(line => line.Amount);
}
