namespace Byrelaw.Planning.Seasons;

/// <summary>Everything up to the sessions as planned.</summary>
/// <param name="Numbers">As far as they go.</param>
/// <param name="Forecaster">Of the chain; null where the assumptions do not say how many embryos come.</param>
internal sealed record SeasonOutline(SeasonNumbers Numbers, Forecaster? Forecaster)
{
    /// <summary>How sure to be where the programme does not say. Common practice, no source.</summary>
    private const double UsualCertainty = 0.8;

    /// <param name="inputs">What it is worked out from.</param>
    /// <param name="compared">Whether what is only told, and planned with nowhere, is worked out too: each method's number.</param>
    public static SeasonOutline Of(SeasonInputs inputs, bool compared)
    {
        var reading = ChainReading.Of(inputs.Plans, inputs.Aims, inputs.Carriers);
        var options = MethodOptions.Of(inputs);
        var forecaster = reading.Chain is { } chain ? new Forecaster(chain) : null;
        var embryos = forecaster?.Meet(Collected(inputs)).Embryos;
        var certainty = inputs.Aims.Wants?.Sure ?? UsualCertainty;
        var numbers = new SeasonNumbers
        {
            Reading = reading,
            Certainty = certainty,
            Methods = compared ? [.. options.Select(option => MethodNumbers.Of(inputs, option, embryos?.Quantile(0.5), certainty))] : [],
        };
        return embryos is null
            ? new(numbers, null)
            : new(options.IsEmpty ? numbers with { Sessions = [Collected(inputs) with { Times = inputs.Sessions }] } : WithRecipients(inputs, numbers, options, embryos), forecaster);
    }

    /// <summary>As many as the programme says; else as many as balance idle recipients and surplus embryos, by the method liked best, or all there are.</summary>
    private static SeasonNumbers WithRecipients(SeasonInputs inputs, SeasonNumbers numbers, ImmutableArray<Option> options, Counts embryos)
    {
        var liked = options[0];
        var inVain = InVain.Of(inputs, numbers.Reading.Chain!, liked);
        var balance = Balance.Find(embryos, liked.Preparing.Used, inVain.IdleWeight, inVain.SurplusWeight);
        var said = Said(inputs, options);
        return numbers with
        {
            InVain = inVain,
            Balance = balance,
            IsByTheProgramme = !said.IsEmpty,
            Sessions = [Collected(inputs) with { Treated = said.IsEmpty ? [new(liked.Preparing, Math.Min(balance.Best.Animals, inputs.Animals))] : said, Times = inputs.Sessions }],
        };
    }

    private static SessionSize Collected(SeasonInputs inputs) => new(Math.Max(0, inputs.Donors - inputs.Own.Length), []) { Own = inputs.Own };

    private static ImmutableArray<Treated> Said(SeasonInputs inputs, ImmutableArray<Option> options) =>
    [
        .. from preparation in inputs.Aims.Recipients
           where preparation.Count is not null
           from option in options
           where inputs.Plans.Method(preparation.Method)?.Name == option.Chain.Method
           select new Treated(option.Preparing, preparation.Count!.Value),
    ];
}
