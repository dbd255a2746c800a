namespace Byrelaw.Planning.Seasons;

/// <summary>Looks up the assumptions of a chain, and keeps account of those that were used and those that are missing.</summary>
internal sealed class ChainReader(PlanStatements plans, Aims aims, CarrierShares carriers)
{
    private readonly ImmutableArray<Assumption>.Builder _used = ImmutableArray.CreateBuilder<Assumption>();
    private readonly ImmutableArray<AssumedQuantity>.Builder _missing = ImmutableArray.CreateBuilder<AssumedQuantity>();

    public ChainReading Read()
    {
        var (source, steps) = (Source(), Steps());
        var goal = aims.Wants is { } want && Stages.Of(want.What) is var stage && (stage == Stage.Transfers || steps.Any(step => step.To == stage))
            ? new Goal(stage, want.Count, want.Sure)
            : null;
        var (used, missing) = (_used.ToImmutable(), _missing.ToImmutable());
        var tank = source is null || aims.Embryos == EmbryoOrigin.Frozen || aims.InTheTank == 0 ? null : ReadTank(steps);
        ImmutableArray<OwnDonor> own = source is null ? [] : [.. Own(source)];
        return new(source is null ? null : new(source, steps, goal, tank) { Own = own }, used.AddRange(_used.Skip(used.Length).Except(used)), missing)
        {
            MissingOfTank = [.. _missing.Skip(missing.Length)],
        };
    }

    /// <summary>What becomes of a straw; null where an assumption is missing that fresh embryos have: then straws are not counted.</summary>
    private Tank? ReadTank(ImmutableArray<Step> fresh)
    {
        var (steps, used, missing) = (ImmutableArray.CreateBuilder<TankStep>(), _used.Count, _missing.Count);
        foreach (var (stage, quantity) in Stages.AfterTransfer(plans).Where(step => fresh.Any(one => one.To == step.Stage)))
        {
            var same = Sorts(quantity, EmbryoState.Fresh, aims.Semen).SequenceEqual(Sorts(quantity, EmbryoState.Frozen, OfTank));
            if (Share(quantity, EmbryoState.Frozen, OfTank) is { } share)
            {
                steps.Add(new(stage, share, same));
            }
        }

        if (_missing.Count == missing)
        {
            return new(aims.InTheTank, steps.ToImmutable());
        }

        while (_used.Count > used)
        {
            _used.RemoveAt(_used.Count - 1);
        }

        return null;
    }

    /// <summary>The semen of the straws: sexed as the programme's is, for heifers where it is not.</summary>
    private Semen OfTank => !aims.TankIsSexed ? Semen.Unsexed : aims.Semen == Semen.SexedMale ? Semen.SexedMale : Semen.SexedFemale;

    private EmbryoState State => aims.Embryos == EmbryoOrigin.Frozen ? EmbryoState.Frozen : EmbryoState.Fresh;

    /// <summary>Donors with a line of their own; one whose lines say what is said of all is none.</summary>
    private IEnumerable<OwnDonor> Own(EmbryoSource general) => plans.Assumptions.Select(one => one.Donor).OfType<string>().Distinct()
        .Select(donor => (donor, Source: Source(donor))).Where(one => one.Source is not null && one.Source != general)
        .Select(one => new OwnDonor(one.donor, one.Source!.PerTime, one.Source.Fit));

    private EmbryoSource? Source(string? donor = null)
    {
        switch (aims.Embryos)
        {
            case EmbryoOrigin.Frozen:
                return EmbryoSource.Frozen(Rate.Always);
            case EmbryoOrigin.Flushed:
                return Number(AssumedQuantity.EmbryosPerFlush, donor) is { } embryos ? EmbryoSource.Flushed(embryos) : null;
            default:
                var (oocytes, fit) = (Number(AssumedQuantity.OocytesPerCollection, donor), Share(AssumedQuantity.EmbryosPerOocyte, State, aims.Semen, donor));
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
    private Yield? Number(AssumedQuantity quantity, string? donor)
    {
        if (Noted(quantity, [Find(quantity, null, State, aims.Semen, donor)]) is not [{ Mean: { } mean } found])
        {
            return null;
        }

        return new(mean, found.Spread ?? Math.Sqrt(mean), found.Weight);
    }

    /// <summary>
    /// The share among the recipients there are: heifers, dry cows and others each with their own, where the file tells them apart.
    /// </summary>
    private Rate? Share(AssumedQuantity quantity) => Share(quantity, State, aims.Semen);

    private Rate? Share(AssumedQuantity quantity, EmbryoState state, Semen semen, string? donor = null)
    {
        var lines = Sorts(quantity, state, semen, donor);
        if (Noted(quantity, lines) is not [var first, ..])
        {
            return null;
        }

        var bySort = carriers.Sorts().Zip(lines).ToDictionary(pair => pair.First, pair => pair.Second!);
        var (mixed, of) = (RateOf(first, semen), 0.0);
        foreach (var line in carriers.Parts(sort => RateOf(bySort[sort], semen).Share).GroupBy(part => bySort[part.Sort], part => part.Part))
        {
            // Sorts with one line share what is not known of it.
            var part = line.Sum();
            of += part;
            mixed = part <= 0 ? mixed : of <= part ? RateOf(line.Key, semen) : mixed.MixedWith(RateOf(line.Key, semen), part / of);
        }

        return mixed;
    }

    private Assumption?[] Sorts(AssumedQuantity quantity, EmbryoState state, Semen semen, string? donor = null) => [.. carriers.Sorts().Select(sort => Find(quantity, sort, state, semen, donor))];

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
    private static Rate RateOf(Assumption found, Semen semen) => found.Share!.ToRate() is var rate
        && found is { Quantity: AssumedQuantity.HeiferPerCalf, WithSexedSemen: true } && semen == Semen.SexedMale
            ? rate with { Share = 1 - rate.Share }
            : rate;

    private Assumption? Find(AssumedQuantity quantity, Carrier? animals, EmbryoState state, Semen semen, string? donor) =>
        plans.Assume(quantity, state, animals, semen != Semen.Unsexed, donor: donor);
}
