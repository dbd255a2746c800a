namespace Byrelaw.Planning.Tests.Forecasting;

/// <summary>Invented programmes that the tests share.</summary>
internal static class Examples
{
    public static readonly Preparing Insert = new("Insert", new(0.8, 30));

    public static readonly Preparing NaturalHeat = new("Natural heat", new(0.14, 20));

    public static readonly ImmutableArray<Step> AfterTransfer =
    [
        new(Stage.Pregnant, Rate.From(36, 80)),
        new(Stage.Calvings, new(0.81, 40)),
        new(Stage.Alive, new(0.95)),
        new(Stage.Heifers, new(0.47)),
    ];

    public static Chain Collected(double embryosWeight = 50, double? oocytesWeight = null) => new(
        EmbryoSource.Collected(new(9, 6, oocytesWeight), new(0.22, embryosWeight)), AfterTransfer, new(Stage.Heifers, 6, 0.8));

    /// <summary>The same with straws, which do worse at first and then as fresh ones do.</summary>
    public static Chain WithTank(this Chain chain, int straws) => chain with
    {
        Tank = new(straws, [new(Stage.Pregnant, new(0.33, 20), false), new(Stage.Calvings, new(0.73, 30), false), new(Stage.Alive, new(0.95), true), new(Stage.Heifers, new(0.87, 60), false)]),
    };

    public static SessionSize Session(int donors, int insert, int times = 1, int naturalHeat = 0) => new(
        donors, naturalHeat == 0 ? [new(Insert, insert)] : [new(Insert, insert), new(NaturalHeat, naturalHeat)], times);

    /// <summary>The largest difference between two counts' chances of so many or more.</summary>
    public static double Apart(Counts one, Counts other) =>
        Enumerable.Range(0, Math.Max(one.Most, other.Most) + 2).Max(count => Math.Abs(one.AtLeast(count) - other.AtLeast(count)));
}
