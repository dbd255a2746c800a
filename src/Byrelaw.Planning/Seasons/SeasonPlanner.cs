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

        var numbers = outline.Numbers;

        // What one more would bring is told of the season as it may become: before anything is found out nobody is named, and one more of nothing brings nothing.
        (Forecaster Forecaster, ImmutableArray<SessionSize> Sessions)? further = null;
        if (inputs.Named is { } named && ForecasterOf(inputs, named) is { } byName)
        {
            (forecaster, numbers) = (byName, numbers with { Sessions = named.Sessions });
            if (inputs.IfAllPass is { } all && ForecasterOf(inputs, all) is { } ofAll)
            {
                var atBest = ofAll.Forecast(all.Sessions);
                (further, numbers) = ((ofAll, all.Sessions), numbers with { IfAllPass = atBest, BudgetIfAllPass = Cost(inputs, atBest), Between = Between(inputs, ofAll) });
            }
        }

        var forecast = forecaster.Forecast(numbers.Sessions);
        numbers = numbers with { Forecast = forecast, Budget = Cost(inputs, forecast) };
        var (from, sessions) = further ?? (forecaster, numbers.Sessions);
        return from.Chain.Goal is null ? numbers : numbers with
        {
            Worth = Worth.Of(from, sessions),
            Needed = MoreNeeded.Of(from, inputs, numbers, sessions),
            Farthest = from.Wanted(MoreNeeded.Everything(inputs, numbers)),
        };
    }

    /// <summary>Only what comes of it and what to pay on average: quick enough for every visit that is compared.</summary>
    /// <returns>Null where the assumptions do not say how many embryos come.</returns>
    public static SeasonOutlook? Outlook(SeasonInputs inputs)
    {
        var outline = SeasonOutline.Of(inputs, false);
        return outline.Forecaster?.Forecast(outline.Numbers.Sessions) is { } forecast
            ? new(forecast, Budgeter.Lines(forecast, Charges.Of(inputs, outline.Numbers.Sessions), InVain.FitToFreeze(inputs)), !WithoutPrice.Of(inputs, outline.Numbers.Sessions).IsEmpty)
            : null;
    }

    /// <summary>A third between those named and all who are asked about: so many turn out to be usable, and what is not known of that share is shared by all of them.</summary>
    private static Forecast? Between(SeasonInputs inputs, Forecaster forecaster)
    {
        if (inputs.Plans.Assume(AssumedQuantity.AskedAndUsable)?.Share is not { } share || inputs.IfUsable is not { } sessions)
        {
            return null;
        }

        var cases = StandIns.ForRate(share.ToRate(), 5).Select(@case => (@case.Weight, Forecast: forecaster.Forecast(sessions(@case.Value)!.Sessions))).ToList();
        return new(forecaster.Chain, [.. cases[0].Forecast.Stages.Select((stage, i) => stage with { Counts = Counts.Mixed([.. cases.Select(@case => (@case.Weight, @case.Forecast.Stages[i].Counts))]) })], []);
    }

    private static Forecaster? ForecasterOf(SeasonInputs inputs, SessionsByName named) =>
        ChainReading.Of(inputs.Plans, inputs.Aims, named.Carriers).Chain is { } chain ? new Forecaster(chain) : null;

    private static Budget? Cost(SeasonInputs inputs, Forecast forecast)
    {
        ImmutableArray<SessionSize> sessions = [.. forecast.Sessions.Select(meeting => meeting.Session)];
        var charges = Charges.Of(inputs, sessions);
        return charges.IsEmpty ? null : Budgeter.AddUp(
            forecast, charges, InVain.FitToFreeze(inputs), Charges.Currency(inputs), inputs.Aims.Budget?.Amount, WithoutPrice.Of(inputs, sessions));
    }
}

/// <summary>What comes of a season and what it costs on average.</summary>
/// <param name="Forecast">What comes of it.</param>
/// <param name="Lines">What is paid.</param>
/// <param name="IsAtLeast">Whether something that is done has no price.</param>
public sealed record SeasonOutlook(Forecast Forecast, ImmutableArray<ExpectedCharge> Lines, bool IsAtLeast)
{
    /// <summary>To pay on average.</summary>
    public double Cost => Lines.Sum(line => line.Amount);
}
