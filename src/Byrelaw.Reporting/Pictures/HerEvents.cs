namespace Byrelaw.Reporting.Pictures;

/// <summary>The kinds of record that are drawn by a sign of their own, by their names in the base words.</summary>
internal static class HerEvents
{
    private static readonly (DayMarkKind Sign, string Name)[] Signs =
    [
        (DayMarkKind.Calved, "calving"), (DayMarkKind.Heat, "heat"), (DayMarkKind.Served, "mating"), (DayMarkKind.Served, "transfer"), (DayMarkKind.Looked, "pregnancy test"),
    ];

    /// <summary>Those that a farm's words have, each with its sign.</summary>
    public static IReadOnlyList<(DayMarkKind Sign, Kind Kind)> Of(Vocabulary words) =>
        [.. Signs.Select(one => (one.Sign, Kind: words.FindKind(one.Name))).Where(one => one.Kind is not null).Select(one => (one.Sign, one.Kind!))];
}
