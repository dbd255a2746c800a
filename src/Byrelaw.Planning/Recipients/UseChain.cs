namespace Byrelaw.Planning.Recipients;

/// <summary>How animals treated or watched by one method become recipients that are accepted on the day, loss by loss.</summary>
/// <param name="Method">The method's name.</param>
/// <param name="Losses">In order; each share is one of those that the step before it left, the first of animals treated or watched.</param>
public sealed record UseChain(string Method, ImmutableArray<Loss> Losses)
{
    /// <summary>The share of animals treated or watched that is accepted.</summary>
    public Rate Used => Losses.Aggregate(Rate.Always, (used, loss) => used.Then(loss.Kept));

    /// <summary>The method as a forecast needs it.</summary>
    public Preparing Preparing => new(Method, Used);

    /// <summary>How many are left after every step, of so many animals: exact chances, step by step.</summary>
    public ImmutableArray<Counts> Of(int animals)
    {
        var left = Counts.Exactly(animals);
        return [.. Losses.Select(loss => left = left.ThinnedBy(loss.Kept))];
    }

    /// <summary>The chain of a method in a session.</summary>
    /// <param name="method">For recipients.</param>
    /// <param name="days">Its days.</param>
    /// <param name="plans">What is assumed of natural heat.</param>
    public static UseChain Of(Method method, TreatmentCalendar days, PlanStatements plans)
    {
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(plans);
        return method.IsNatural ? OfNaturalHeat(method, days.Heats.Length, plans.Assume(AssumedQuantity.RecipientsCycling)?.Share?.ToRate()) : OfTreatment(method, days.Serves);
    }

    /// <summary>The chain of a treatment.</summary>
    /// <param name="method">A treatment for recipients.</param>
    /// <param name="serves">Whether a heat on this day of the method serves a transfer.</param>
    public static UseChain OfTreatment(Method method, Func<int, bool> serves)
    {
        var losses = ImmutableArray.CreateBuilder<Loss>();
        if (method.InHeat is { } inHeat)
        {
            losses.Add(new(UseStep.InHeat, inHeat.Share.ToRate()));
            if (!inHeat.Days.IsEmpty)
            {
                losses.Add(new(UseStep.InTheWindow, new(Math.Clamp(inHeat.Days.Where(day => serves(day.Day)).Sum(day => day.Share), 0, 1))));
            }
        }
        else if (method.HeatDay is { } day && !serves(day))
        {
            losses.Add(new(UseStep.InTheWindow, new(0)));
        }

        AddSeenAndAccepted(losses, method);
        return new(method.Name, losses.ToImmutable());
    }

    /// <summary>The chain of natural heat: animals are watched, and those that come in heat on the right days are used.</summary>
    /// <param name="method">Natural heat.</param>
    /// <param name="days">How many days' heats serve a transfer.</param>
    /// <param name="cycling">The share of animals watched that cycles; null where all are taken to.</param>
    public static UseChain OfNaturalHeat(Method method, int days, Rate? cycling)
    {
        var losses = ImmutableArray.CreateBuilder<Loss>();
        if (cycling is { } share)
        {
            losses.Add(new(UseStep.Cycling, share));
        }

        losses.Add(new(UseStep.InTheWindow, new(Math.Min((double)days / method.CycleDays!.Value, 1))));
        AddSeenAndAccepted(losses, method);
        return new(method.Name, losses.ToImmutable());
    }

    private static void AddSeenAndAccepted(ImmutableArray<Loss>.Builder losses, Method method)
    {
        if (method.HeatSeen is { } seen)
        {
            losses.Add(new(UseStep.Seen, seen.ToRate()));
        }

        if (method.Accepted is { } accepted)
        {
            losses.Add(new(UseStep.Accepted, accepted.ToRate()));
        }
    }
}

/// <summary>One step on the way to being accepted.</summary>
/// <param name="Step">Which.</param>
/// <param name="Kept">The share that passes it.</param>
public sealed record Loss(UseStep Step, Rate Kept);

/// <summary>What an animal must do to be used, in order.</summary>
public enum UseStep
{
    /// <summary>She cycles; asked of natural heat only.</summary>
    Cycling,

    /// <summary>She comes in heat after the treatment.</summary>
    InHeat,

    /// <summary>Her heat falls on a day that serves a transfer.</summary>
    InTheWindow,

    /// <summary>Her heat is seen.</summary>
    Seen,

    /// <summary>She is accepted on the day.</summary>
    Accepted,
}
