namespace Byrelaw.Language.Reasoning.Claims;

/// <summary>Tells windows apart, and which holds all of another.</summary>
internal static class WindowKey
{
    /// <summary>The same text for the same windows, wherever they are written.</summary>
    public static string Of(ImmutableArray<Window> windows) => string.Join(';', windows.Select(Of).Order(StringComparer.Ordinal));

    /// <summary>Whether every event of the inner windows is surely in the outer ones too.</summary>
    public static bool Contains(ImmutableArray<Window> outer, ImmutableArray<Window> inner) =>
        outer.All(window => window is Ever or SinceBirth || inner.Any(other => Contains(window, other)));

    /// <summary>A row of windows that differ in one length or day only, and their place in it: each holds all of those before it.</summary>
    public static (string Row, long Place) RowOf(ImmutableArray<Window> windows)
    {
        for (var i = 0; i < windows.Length; i++)
        {
            if (RowOf(windows[i]) is var (row, place))
            {
                return ($"{row}, {Of(windows.RemoveAt(i))}", place);
            }
        }

        return (Of(windows), 0);
    }

    private static (string Row, long Place)? RowOf(Window window) => window switch
    {
        InTheLast last => ($"in {Unit(last.Length)}", Count(last.Length)),
        AtLeastAgo ago => ($"ago {Unit(ago.Near)}", -Count(ago.Near)),
        BetweenAgo ago => ($"between {Long(ago.Near)} {Unit(ago.Far)}", Count(ago.Far)),
        BeforeDate before => ($"before {Date(before.Date)} {Unit(before.Length)}", Count(before.Length)),
        FromAfterSpell after => ($"from \"{NameFolding.Fold(after.Spell.Name)}\" {Unit(after.Wait)}", -Count(after.Wait)),
        DaysAfter after => ($"after {Day(after.Day)} {Unit(after.Length)}", Count(after.Length)),
        FromAfterLast after => ($"from {Kinds(after.Kinds)} {Unit(after.Wait)}", -Count(after.Wait)),
        SinceDate { Date.Value: { } day } => ("since", -Period.DaysBetween(LocalDate.MinIsoValue, day)),
        _ => null,
    };

    private static string Unit(TimeLength length) => DaysLong.Of(length).Months > 0 ? "m" : "d";

    private static long Count(TimeLength length) => DaysLong.Of(length) is var (months, days) && months > 0 ? months : days;

    private static bool Contains(Window outer, Window inner) => (outer, inner) switch
    {
        (InTheLast o, InTheLast i) => IsWithin(i.Length, o.Length),
        (InTheLast o, BetweenAgo i) => IsWithin(i.Far, o.Length),
        (AtLeastAgo o, AtLeastAgo i) => IsWithin(o.Near, i.Near),
        (AtLeastAgo o, BetweenAgo i) => IsWithin(o.Near, i.Near),
        (BetweenAgo o, BetweenAgo i) => IsWithin(o.Near, i.Near) && IsWithin(i.Far, o.Far),
        (SinceLast o, FromAfterLast i) => Same(o.Kinds, i.Kinds),
        (FromAfterLast o, FromAfterLast i) => Same(o.Kinds, i.Kinds) && IsWithin(o.Wait, i.Wait),
        (FromAfterSpell o, FromAfterSpell i) => o.Spell.Name == i.Spell.Name && IsWithin(o.Wait, i.Wait),
        (BeforeDate o, BeforeDate i) => o.Date == i.Date && IsWithin(i.Length, o.Length),
        (DaysAfter o, DaysAfter i) => Day(o.Day) == Day(i.Day) && IsWithin(i.Length, o.Length),
        (SinceDate o, SinceDate i) => o.Date == i.Date || o.Date.Value <= i.Date.Value,
        _ => Of(outer) == Of(inner),
    };

    private static bool IsWithin(TimeLength shorter, TimeLength longer)
    {
        var (one, two) = (DaysLong.Of(shorter), DaysLong.Of(longer));
        return one.Months == two.Months ? one.Days <= two.Days : one.Most <= two.Fewest;
    }

    private static bool Same(ImmutableArray<Kind> one, ImmutableArray<Kind> two) => Kinds(one) == Kinds(two);

    private static string Of(Window window) => window switch
    {
        InTheLast last => $"in {Long(last.Length)}",
        AtLeastAgo ago => $"ago {Long(ago.Near)}",
        BetweenAgo ago => $"between {Long(ago.Near)} {Long(ago.Far)}",
        BeforeDate before => $"{Long(before.Length)} before {Date(before.Date)}",
        SinceLast since => $"since {Kinds(since.Kinds)}",
        FromAfterSpell after => $"from {Long(after.Wait)} \"{NameFolding.Fold(after.Spell.Name)}\"",
        FromAfterLast after => $"from {Long(after.Wait)} {Kinds(after.Kinds)}",
        SinceDate date => $"since {Date(date.Date)}",
        BeforeDay before => $"till {Day(before.Day)}",
        DaysAfter after => $"{Long(after.Length)} after {Day(after.Day)}",
        SinceBirth or Ever => "ever",
        _ => throw MissingKind.Of(window, nameof(WindowKey)),
    };

    private static string Long(TimeLength length) => $"{DaysLong.Of(length).Months}m{DaysLong.Of(length).Days}d";

    private static string Date(DateReference date) => date.Value is { } day ? day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) : $"\"{NameFolding.Fold(date.Name ?? "")}\"";

    private static string Day(WindowDay day) => day.Date is { } date ? Date(date) : $"last {Kinds(day.Last)}";

    private static string Kinds(ImmutableArray<Kind> kinds) => string.Join('+', kinds.Select(kind => kind.Id).Distinct().Order());
}
