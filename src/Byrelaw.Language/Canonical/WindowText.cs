namespace Byrelaw.Language.Canonical;

/// <summary>Windows, each with a space before it.</summary>
internal static class WindowText
{
    /// <summary>All windows of a condition, in their order.</summary>
    public static string Of(ImmutableArray<Window> windows, Func<string, string> name) =>
        string.Concat(windows.Select(window => " " + Of(window, name)));

    /// <summary><c>calving or abortion</c>.</summary>
    public static string Kinds(ImmutableArray<Kind> kinds, Func<string, string> name) =>
        string.Join(" or ", kinds.Select(kind => KindText.Of(kind, name)));

    private static string Of(Window window, Func<string, string> name) => window switch
    {
        InTheLast last => $"in the last {last.Length}",
        AtLeastAgo ago => $"at least {ago.Near} ago",
        BetweenAgo ago => $"between {DemandText.Between(ago.Near, ago.Far)} ago",
        BeforeDate before => $"in the {before.Length} before {Of(before.Date, name)}",
        SinceLast since => $"since last {Kinds(since.Kinds, name)}",
        FromAfterSpell after => $"from {after.Wait} after last {name(after.Spell.Name)}",
        FromAfterLast { IsDayOf: true } from => $"from day {NumberText.Of(from.Wait.Count)} of last {Kinds(from.Kinds, name)}",
        FromAfterLast from => $"from {from.Wait} after last {Kinds(from.Kinds, name)}",
        SinceDate since => $"since {Of(since.Date, name)}",
        BeforeDay before => $"before {Of(before.Day, name)}",
        DaysAfter after => $"in the {after.Length} after {Of(after.Day, name)}",
        SinceBirth => "since birth",
        Ever => "ever",
        _ => throw MissingKind.Of(window, nameof(WindowText)),
    };

    private static string Of(WindowDay day, Func<string, string> name) => day.Date is { } date ? Of(date, name) : $"last {Kinds(day.Last, name)}";

    private static string Of(DateReference date, Func<string, string> name) =>
        date.Name is { } named ? name(named) : date.Value is { } day ? NumberText.Of(day) : "";
}
