namespace Byrelaw.Planning.Forecasting;

/// <summary>Sessions that are alike: a collection or flush with the transfers that come of it.</summary>
/// <param name="Donors">Collected or flushed each time; for frozen embryos, straws thawed.</param>
/// <param name="Treated">
/// Recipients treated or watched each time, by method; empty where it is taken that every embryo finds one.
/// </param>
/// <param name="Times">How many such sessions.</param>
public sealed record Session(int Donors, ImmutableArray<Treated> Treated, int Times = 1)
{
    /// <summary>Recipients treated each time, over all methods.</summary>
    public int Animals => Treated.Sum(treated => treated.Animals);

    /// <summary>Recipients accepted at one such session; null where every embryo finds one.</summary>
    /// <param name="used">The share that each method is taken to have.</param>
    internal Counts? Recipients(Func<Preparing, Rate> used) => Treated.IsEmpty
        ? null
        : Treated.Select(treated => Counts.Of(treated.Animals, used(treated.Method))).Aggregate((sum, next) => sum.Plus(next));
}

/// <summary>Animals treated or watched by one method.</summary>
/// <param name="Method">How.</param>
/// <param name="Animals">How many, each session.</param>
public sealed record Treated(Preparing Method, int Animals);

/// <summary>A way of having recipients ready, as far as a forecast needs it.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Used">The share of animals treated or watched that is accepted on the day.</param>
public sealed record Preparing(string Name, Rate Used);
