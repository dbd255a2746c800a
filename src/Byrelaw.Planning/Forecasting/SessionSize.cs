namespace Byrelaw.Planning.Forecasting;

/// <summary>Sessions that are alike: a collection or flush with the transfers that come of it.</summary>
/// <param name="Donors">Collected or flushed each time; for frozen embryos, straws thawed.</param>
/// <param name="Treated">
/// Recipients treated or watched each time, by method; empty where it is taken that every embryo finds one.
/// </param>
/// <param name="Times">How many such sessions.</param>
public sealed record SessionSize(int Donors, ImmutableArray<Treated> Treated, int Times = 1)
{
    /// <summary>Donors of whom the programme says more than of all, besides <see cref="Donors"/>.</summary>
    public ImmutableArray<OwnDonor> Own { get; init; } = [];

    /// <summary>Donors to ask about, besides: each is collected if she turns out to be usable.</summary>
    public int DonorsAsked { get; init; }

    /// <summary>The share of all who are asked about, donors and recipients, that turns out to be usable.</summary>
    public double Usable { get; init; } = 1;

    /// <summary>Donors that are collected for sure, each time.</summary>
    public int Collected => Donors + Own.Count(donor => !donor.IsAsked);

    /// <summary>Donors that are collected or asked about, each time.</summary>
    public int AllDonors => Donors + DonorsAsked + Own.Length;

    /// <summary>Donors that are collected, each time.</summary>
    internal Counts DonorCounts => Counts.Exactly(Collected).Plus(Counts.Of(AllDonors - Collected, new(Usable)));

    /// <summary>Whether all donors are alike, and none is to be asked about.</summary>
    internal bool HasAlikeDonors => Own.IsEmpty && (DonorsAsked == 0 || Usable >= 1);

    /// <summary>Recipients treated each time, over all methods.</summary>
    public int Animals => Treated.Sum(treated => treated.Animals);

    /// <summary>Recipients accepted at one such session; null where every embryo finds one.</summary>
    /// <param name="used">The share that each method is taken to have.</param>
    internal Counts? Recipients(Func<Preparing, Rate> used) => Treated.IsEmpty
        ? null
        : Treated.Select(treated => treated.Counts(Usable).ThinnedBy(used(treated.Method))).Aggregate((sum, next) => sum.Plus(next));
}

/// <summary>Animals treated or watched by one method.</summary>
/// <param name="Method">How.</param>
/// <param name="Animals">How many, each session.</param>
public sealed record Treated(Preparing Method, int Animals)
{
    /// <summary>Animals to ask about, besides: each is treated if she turns out to be usable.</summary>
    public int Asked { get; init; }

    /// <summary>How many are treated or watched.</summary>
    /// <param name="usable">The share of those asked about that turns out to be usable.</param>
    internal Counts Counts(double usable) => Asked == 0 ? Chances.Counts.Exactly(Animals) : Chances.Counts.Exactly(Animals).Plus(Chances.Counts.Of(Asked, new(usable)));
}

/// <summary>A donor of whom the programme says more than of all.</summary>
/// <param name="Number">Her number on the farm.</param>
/// <param name="PerTime">Oocytes per collection, embryos per flush.</param>
/// <param name="Fit">Embryos per oocyte.</param>
/// <param name="IsAsked">Whether she is to be asked about.</param>
public sealed record OwnDonor(string Number, Yield PerTime, Rate Fit, bool IsAsked = false);

/// <summary>A way of having recipients ready, as far as a forecast needs it.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Used">The share of animals treated or watched that is accepted on the day.</param>
public sealed record Preparing(string Name, Rate Used);
