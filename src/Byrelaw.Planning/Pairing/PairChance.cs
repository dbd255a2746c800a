namespace Byrelaw.Planning.Pairing;

/// <summary>How much of what the programme wants one pair brings, on average, by the rates that the plan goes by.</summary>
internal sealed class PairChance(Rulebook rulebook, DryCows dry)
{
    private const double Million = 1_000_000;

    private readonly PlanStatements _plans = rulebook.Plans;
    private readonly Method? _natural = rulebook.Plans.Methods.FirstOrDefault(method => method.IsNatural);
    private readonly Stage _goal = rulebook.Programme!.Aims.Wants is { } want ? Stages.Of(want.What) : Stage.Pregnant;

    /// <summary>Whether the programme's rates lead as far as what it wants; else every pair counts for one.</summary>
    public bool IsKnown { get; private set; } = true;

    /// <summary>What is counted.</summary>
    public Stage Goal => _goal;

    /// <summary>In millionths; not less than one.</summary>
    public long Wanted(EmbryoToday embryo, Recipient recipient)
    {
        if (Share(embryo, recipient, _goal) is { } share)
        {
            return Math.Max(1, (long)Math.Round(share * Million));
        }

        IsKnown = false;
        return (long)Million;
    }

    /// <summary>The chance that a pair comes as far as a stage; null where no rate says.</summary>
    public double? Share(EmbryoToday embryo, Recipient recipient, Stage stage)
    {
        var share = recipient.IsExaminedFirst ? (recipient.Method ?? _natural)?.Accepted?.Value ?? 1 : 1;
        var sexed = embryo.Embryo.Semen is "sexed female" or "sexed male";
        foreach (var (to, quantity) in Stages.AfterTransfer(_plans).TakeWhile(step => step.Stage <= stage))
        {
            if (OfSex(to, embryo) is { } known)
            {
                share *= known;
            }
            else if (_plans.Assume(quantity, embryo.IsFresh ? EmbryoState.Fresh : EmbryoState.Frozen, CarrierOf(recipient), sexed)?.Share is { } said)
            {
                share *= to == Stage.Heifers && embryo.Embryo.Semen == "sexed male" ? 1 - said.Value : said.Value;
            }
            else
            {
                return null;
            }
        }

        return share;
    }

    /// <summary>Of one whose sex was tested, whether its calf is a heifer.</summary>
    private static double? OfSex(Stage to, EmbryoToday embryo) => to != Stage.Heifers ? null : embryo.Embryo.Sex switch
    {
        Sex.Female => 1,
        Sex.Male => 0,
        _ => null,
    };

    private Carrier CarrierOf(Recipient recipient) =>
        recipient.Judged.Sort == AnimalSort.Heifer ? Carrier.Heifers : dry.Of(recipient.Animal) == Truth.True ? Carrier.DryCows : Carrier.Cows;
}
