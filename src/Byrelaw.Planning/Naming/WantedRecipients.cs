namespace Byrelaw.Planning.Naming;

/// <summary>How many recipients one session wants: what the programme says, else what its donors' embryos are best met by.</summary>
internal sealed class WantedRecipients
{
    private readonly int? _said;
    private readonly Counts? _embryos;
    private readonly InVain? _inVain;

    private WantedRecipients(int? said, Counts? embryos, InVain? inVain, Rate? liked) => (_said, _embryos, _inVain, Liked) = (said, embryos, inVain, liked);

    /// <summary>The share used of those treated by the method liked best; null where embryos cannot be reckoned with.</summary>
    public Rate? Liked { get; }

    /// <summary>What one session is to be met with.</summary>
    public static WantedRecipients Of(JudgedSession session, LocalDate today)
    {
        if (session.IsStopped)
        {
            return new(0, null, null, null);
        }

        var aims = session.Programme.Aims;
        var said = aims.Recipients.Any(one => one.Count is not null) ? aims.Recipients.Sum(one => one.Count ?? 0) : (int?)null;
        var season = Season.Of(session, today);
        var inputs = SeasonInputs.Of(season, PlanCalendar.Of(season));
        var options = MethodOptions.Of(inputs);
        if (ChainReading.Of(inputs.Plans, inputs.Aims, inputs.Carriers).Chain is not { } chain || options.IsEmpty)
        {
            return new(said, null, null, null);
        }

        var embryos = new Forecaster(chain).Meet(SessionsByName.Donors(session, (session.Donors?.Animals ?? []).Where(donor => donor.Answer == Answer.Ask).Select(donor => donor.Animal))).Embryos;
        return new(said, embryos, InVain.Of(inputs, chain, options[0]), options[0].Preparing.Used);
    }

    /// <summary>So many animals.</summary>
    /// <param name="used">Of those treated so many are used.</param>
    /// <returns>Null where it is not said.</returns>
    public int? With(Rate? used) => _said is not null || _embryos is null || used is not { } rate
        ? _said : Balance.Find(_embryos, rate, _inVain!.IdleWeight, _inVain.SurplusWeight).Best.Animals;
}
