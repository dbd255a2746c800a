using Byrelaw.Planning.Following;

namespace Byrelaw.Reporting.Following;

/// <summary>What is said of recipients after their transfers.</summary>
internal static class FollowWords
{
    /// <summary>A state, after a number.</summary>
    public static string Of(FollowState state) => state switch
    {
        FollowState.Overdue => "overdue",
        FollowState.ToCheck => "to check now",
        FollowState.Waiting => "too early to check",
        FollowState.Pregnant => "in calf by the latest test",
        FollowState.Lost => "lost",
        FollowState.Empty => "found empty",
        _ => "calved",
    };

    public static string Days(DateInterval days, LocalDate today) => days.Start.Year == today.Year && days.End.Year == today.Year && Dates.Range(days.Start, days.End) is var range ? range.Replace($" {today.Year}", "", StringComparison.Ordinal) : Dates.Range(days.Start, days.End);

    public static string Day(LocalDate? day) => day is { } known ? Dates.Long(known) : "not known: no gestation is assumed";

    /// <summary><c>22 July 2027 (10 July to 3 August 2027)</c>.</summary>
    public static string Due(FollowDates dates) => dates.Calving is { } days ? $"{Dates.Long(dates.Due!.Value)} ({Dates.Range(days.Start, days.End)})" : Day(null);

    /// <summary>A heat is no proof: some show one in calf.</summary>
    public static string Returned(Followed one, LocalDate today) =>
        $"{one.Number} was in heat {Dates.Long(one.Returned!.Value, today.Year)}: no proof, for some show heat in calf. Scan first; no prostaglandin, no pipette. An empty test clears her from {Dates.Long(one.Dates.ClearedFrom, today.Year)} (by hand from {Dates.Long(one.Dates.ClearedByHandFrom, today.Year)}).";

    public static string TooEarly(Followed one, LocalDate today) =>
        $"{one.Number} was found empty {Dates.Long(one.Tested!.Value, today.Year)}, too early for how it was found: that proves nothing. Test again from {Dates.Long(one.Dates.ClearedFrom, today.Year)} (by hand from {Dates.Long(one.Dates.ClearedByHandFrom, today.Year)}).";

    public static string Ended(Followed one, LocalDate today) => one switch
    {
        { Calved: { } day } => $"{one.Number} calved {Dates.Long(day, today.Year)}{(one.Dates.Due is { } due ? $", due {Dates.Long(due, today.Year)}" : "")}; embryo {one.Embryo ?? "not named"}.",
        { LostBy: { } by, LostAfter: { } after } => $"{one.Number} lost it between {Dates.Long(after, today.Year)} and {Dates.Long(by, today.Year)}. Tell the vet.",
        { LostBy: { } by } => $"{one.Number} lost it by {Dates.Long(by, today.Year)}. Tell the vet.",
        _ => $"{one.Number} was found empty {Dates.Long(one.Tested!.Value, today.Year)}.",
    };
}
