namespace Byrelaw.Reporting.Comparing;

/// <summary>Which changes make the difference for some animals.</summary>
internal static class CauseWords
{
    /// <summary>Such as <c>Eight weeks calved (changed)</c>.</summary>
    public static string Title(Cause cause) => Phrases.And([.. cause.Changes.Select(Name)]);

    /// <summary>How they work together, where there are several ways; empty for one change that does it all.</summary>
    public static string HowTogether(Cause cause)
    {
        var alone = cause.Changes.Where((_, place) => cause.Alone[place]).Select(Name).ToList();
        var together = cause.Changes.Length == 1 ? ""
            : alone.Count == cause.Changes.Length ? "Each of them changes something by itself; only together do they come to this."
            : alone.Count == 0 ? "None of them changes anything by itself; together they do."
            : $"{Phrases.And(alone)} {(alone.Count == 1 ? "changes" : "change")} something alone too; the rest only together with the others.";
        var instead = cause.Instead.IsEmpty ? "" : $"Without that, {Phrases.And([.. cause.Instead.Select(Name)])} would come to the same.";
        return $"{together} {instead}".Trim();
    }

    /// <summary>A change in a few words.</summary>
    public static string Name(Change change) => change.Parts[0] switch
    {
        WordDifference => $"the words of the farm ({Numbers.Count(change.Parts.Length, "change", "changes")})",
        RecordsDifference => "what the farm says of its records",
        ProgrammeDifference => "the programme's dates and lists",
        UnreadDifference => "lines that cannot be read",
        WaiverDifference waiver => $"{waiver.Name} for {waiver.Animal} ({(waiver.Happened switch { Happened.Added => "waived", Happened.Gone => "no longer waived", _ => "waived otherwise" })})",
        RuleDifference { Old: not null, New: null } rule => $"{rule.Name} ({(rule.NewDrop is null ? "gone" : "dropped")})",
        RuleDifference { Old: null, New: not null } rule => $"{rule.Name} ({(rule.OldDrop is null ? "new" : "taken up again")})",
        var other => $"{other.Name} ({(other.Happened switch { Happened.Added => "new", Happened.Gone => "gone", _ => "changed" })})",
    };
}
