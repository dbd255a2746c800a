namespace Byrelaw.Planning.Forecasting;

/// <summary>What to expect of a programme.</summary>
/// <param name="Chain">What it rests on.</param>
/// <param name="Stages">Season totals, in the order of the chain.</param>
/// <param name="Sessions">How embryos and recipients meet at one session of each sort.</param>
public sealed record Forecast(Chain Chain, ImmutableArray<StageForecast> Stages, ImmutableArray<Meeting> Sessions)
{
    /// <summary>The season's total at a stage.</summary>
    /// <exception cref="InvalidOperationException">The chain has no such stage.</exception>
    public Counts At(Stage stage) => Stages.Single(forecast => forecast.Stage == stage).Counts;

    /// <summary>The chance that what is wanted comes true; null where nothing is wanted.</summary>
    public double? Chance => Chain.Goal is { } goal ? At(goal.Of).AtLeast(goal.Count) : null;

    /// <summary>How many of what is wanted can be counted on, as surely as asked; null where nothing is wanted.</summary>
    public int? CountedOn => Chain.Goal is { } goal ? At(goal.Of).CountedOn(goal.Certainty) : null;

    /// <summary>Embryos expected, over the season, for which there is no recipient.</summary>
    public double Surplus => Sessions.Sum(meeting => meeting.Session.Times * meeting.Surplus.Mean);

    /// <summary>Recipients expected, over the season, to be accepted and find no embryo, fresh or from the tank.</summary>
    public double Idle => Sessions.Sum(meeting => meeting.Session.Times * meeting.Idle.Mean) - (Thawed?.Mean ?? 0);

    /// <summary>Straws thawed for recipients that found no fresh embryo; null where no tank is counted. They are among the transfers.</summary>
    public Counts? Thawed { get; init; }

    /// <summary>What holds the transfers back: the scarcer of embryos and recipients, or neither if both are scarce about as often.</summary>
    public Bottleneck Limit => (Surplus, Idle) switch
    {
        var (surplus, idle) when surplus > 2 * idle => Bottleneck.Recipients,
        var (surplus, idle) when idle > 2 * surplus => Bottleneck.Embryos,
        _ => Bottleneck.Both,
    };
}

/// <summary>One stage of a forecast.</summary>
/// <param name="Stage">What is counted.</param>
/// <param name="Counts">How many, over the season.</param>
/// <param name="Of">The stage that the rate is a share of; null where there is no rate.</param>
/// <param name="Rate">The share of the stage before; null where the count comes otherwise.</param>
/// <param name="OfFrozen">The share for what was transferred from the tank, where it is another.</param>
public sealed record StageForecast(Stage Stage, Counts Counts, Stage? Of = null, Rate? Rate = null, Rate? OfFrozen = null);

/// <summary>Embryos and recipients at one session.</summary>
/// <param name="Session">Which.</param>
/// <param name="Embryos">Fit for transfer.</param>
/// <param name="Recipients">Accepted; null where it is taken that every embryo finds one.</param>
/// <param name="Transfers">The fewer of the two.</param>
/// <param name="Surplus">Embryos left over.</param>
/// <param name="Idle">Recipients left over.</param>
public sealed record Meeting(SessionSize Session, Counts Embryos, Counts? Recipients, Counts Transfers, Excess Surplus, Excess Idle);

/// <summary>What holds transfers back.</summary>
public enum Bottleneck
{
    /// <summary>Embryos: recipients stand idle far oftener.</summary>
    Embryos,

    /// <summary>Recipients: embryos are left over far oftener.</summary>
    Recipients,

    /// <summary>Each about as often.</summary>
    Both,
}
