namespace Byrelaw.Planning.Seasons;

/// <summary>Looks up the assumptions of a chain, and keeps account of those that were used and those that are missing.</summary>
internal sealed class ChainReader(PlanStatements plans, Aims aims, HeiferShare heifers)
{
    private readonly ImmutableArray<Assumption>.Builder _used = ImmutableArray.CreateBuilder<Assumption>();
    private readonly ImmutableArray<AssumedQuantity>.Builder _missing = ImmutableArray.CreateBuilder<AssumedQuantity>();

    public ChainReading Read()
    {
        var (source, steps) = (Source(), Steps());
        var goal = aims.Wants is { } want && Stages.Of(want.What) is var stage && (stage == Stage.Transfers || steps.Any(step => step.To == stage))
            ? new Goal(stage, want.Count, want.Sure)
            : null;
        return new(source is null ? null : new(source, steps, goal), _used.ToImmutable(), _missing.ToImmutable());
    }

    private EmbryoSource? Source()
    {
        switch (aims.Embryos)
        {
            case EmbryoOrigin.Frozen:
                return EmbryoSource.Frozen(Rate.Always);
            case EmbryoOrigin.Flushed:
                return Number(AssumedQuantity.EmbryosPerFlush) is { } embryos ? EmbryoSource.Flushed(embryos) : null;
            default:
                var (oocytes, fit) = (Number(AssumedQuantity.OocytesPerCollection), Share(AssumedQuantity.EmbryosPerOocyte));
                return oocytes is null || fit is null ? null : EmbryoSource.Collected(oocytes.Value, fit.Value);
        }
    }

    /// <summary>Every missing share is told, but the chain ends at the first.</summary>
    private ImmutableArray<Step> Steps()
    {
        var (steps, ended) = (ImmutableArray.CreateBuilder<Step>(), false);
        foreach (var (stage, quantity) in Stages.AfterTransfer(plans))
        {
            var share = Share(quantity);
            ended |= share is null;
            if (!ended)
            {
                steps.Add(new(stage, share!.Value));
            }
        }

        return steps.ToImmutable();
    }

    /// <summary>A number that varies. Where no spread is said, it varies as much as chance alone makes it.</summary>
    private Yield? Number(AssumedQuantity quantity)
    {
        if (Noted(quantity, [Find(quantity, null)]) is not [{ Mean: { } mean } found])
        {
            return null;
        }

        return new(mean, found.Spread ?? Math.Sqrt(mean), found.Weight);
    }

    /// <summary>
    /// The share among the recipients there are: heifers and cows each with their own, where the file tells them apart. One of whom it is not
    /// known which she is counts as the sort that does worse: nobody is promised more for not having been written down.
    /// </summary>
    private Rate? Share(AssumedQuantity quantity)
    {
        Assumption?[] sorts = heifers switch
        {
            { Most: <= 0 } => [Find(quantity, Audience.Cows)],
            { Least: >= 1 } => [Find(quantity, Audience.Heifers)],
            _ => [Find(quantity, Audience.Cows), Find(quantity, Audience.Heifers)],
        };
        return Noted(quantity, sorts) switch
        {
            [var one] => RateOf(one),
            [var cows, var young] => RateOf(cows).MixedWith(RateOf(young), RateOf(young).Share < RateOf(cows).Share ? heifers.Most : heifers.Least),
            _ => null,
        };
    }

    /// <summary>Those found, without doubles; none where one is missing.</summary>
    private Assumption[] Noted(AssumedQuantity quantity, Assumption?[] found)
    {
        if (found.Contains(null))
        {
            _missing.Add(quantity);
            return [];
        }

        var different = found.Distinct().ToArray();
        _used.AddRange(different!);
        return different!;
    }

    // Semen sexed for bull calves leaves as few heifers as semen sexed for heifers leaves bulls.
    private Rate RateOf(Assumption found) => found.Share!.ToRate() is var rate
        && found is { Quantity: AssumedQuantity.HeiferPerCalf, WithSexedSemen: true } && aims.Semen == Semen.SexedMale
            ? rate with { Share = 1 - rate.Share }
            : rate;

    private Assumption? Find(AssumedQuantity quantity, Audience? animals) => plans.Assume(
        quantity, aims.Embryos == EmbryoOrigin.Frozen ? EmbryoState.Frozen : EmbryoState.Fresh, animals, aims.Semen != Semen.Unsexed);
}
