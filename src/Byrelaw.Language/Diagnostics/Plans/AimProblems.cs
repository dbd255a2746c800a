namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with what a programme wants and how it is to be planned.</summary>
internal static class AimProblems
{
    public static Diagnostic CollectionsOutOfOrder(SourceSpan at, string inOrder) => Collections(
        at, "the collections do not stand in order", "each is later than the one before it").Or(new Proposal(at, inOrder));

    public static Diagnostic TooManyCollections(SourceSpan at, int count, int most) => Collections(
        at, $"these are {count} collections", $"a programme has at most {most}");

    public static Diagnostic CollectionsRepeated(SourceSpan at) => Collections(
        at, "several dates are written, and repeated besides", "a collection that is repeated has one date, from which the others are counted",
        "keep the first date, or write all of them and leave out how often");

    public static Diagnostic WindowBackwards(SourceSpan at) => Problem.Error(
        "B1251", at, "the last day is before the first", "`on a visit between` names the earlier day first")
        .OrAny(at.Text.Split(" and ") is [var first, var last] ? [new Proposal(at, $"{last} and {first}")] : []);

    public static Diagnostic NoVisitBetween(SourceSpan at, string? nearest) => Problem.Error(
        "B1252", at, "no team comes between those days", nearest is null ? "it comes on no day at all" : $"the nearest visit is on {nearest}",
        "look at the days of `visits \"collection\"`, and at the days off");

    public static Diagnostic VisitNotChosen(SourceSpan at, string day) => Problem.Warning(
        "B1253", at, "the visit is still to be chosen", $"until then lists are judged for the first that is possible, {day}",
        "`byrelaw plan` compares all of them; write `collection on DATE` once one is agreed");

    /// <param name="at">The name in its quotes.</param>
    /// <param name="name">The name.</param>
    /// <param name="methods">Those that there are.</param>
    public static Diagnostic UnknownMethod(SourceSpan at, string name, IReadOnlyList<string> methods)
    {
        var near = NearestName.To(name, methods);
        return Problem.Error(
            "B1254", at, $"there is no method {Quoted.Of(name)}", methods.Count == 0 ? "no file declares any" : $"there {(methods.Count == 1 ? "is" : "are")} {Phrases.And([.. methods.Select(Quoted.Of)])}",
            near is not null ? $"did you mean {Quoted.Of(near)}?" : methods.Count == 0 ? "add a `use` for the file that it stands in" : null).OrAny(near is null ? [] : [new Proposal(at, $"\"{near}\"")]);
    }

    public static Diagnostic MethodForOthers(SourceSpan at, string name, bool isForDonors) => Problem.Error(
        "B1255", at, $"{Quoted.Of(name)} is a method for {(isForDonors ? "donors" : "recipients")}",
        isForDonors ? "recipients need a method without the line `for donors`" : "donors need a method with the line `for donors`");

    public static Diagnostic CountForSeveral(SourceSpan at) => Problem.Error(
        "B1256", at, "a number of animals stands before several methods", "each method with a number has a line of its own", "take the number out, or write one line for each")
        .Or(Proposal.WithSpaceBefore(at));

    public static Diagnostic SharesNotWhole(SourceSpan at, string sum) => Problem.Error(
        "B1269", at, $"these shares come to {sum}%", "all that is paid is 100%", "let the shares come to 100%: what nobody pays is missing, and nothing is paid twice");

    public static Diagnostic FrozenWithCollection(SourceSpan at) => Problem.Error(
        "B1257", at, "frozen embryos need no collection", "this programme has one", "write what is in the tank besides as `tank holds 6 frozen embryos`");

    public static Diagnostic NothingCollected(SourceSpan at) => Problem.Error(
        "B1258", at, "these embryos need a collection", "this programme has none", "add a line such as `collection on 2026-10-12`");

    public static Diagnostic AgeFollows(SourceSpan at, SourceSpan line) => Problem.Error(
        "B1259", at, "the age of these embryos follows from the days", "an age is written for frozen embryos only")
        .Or(new Proposal(line, line.Text.Split(',')[0].TrimEnd()));

    public static Diagnostic DayNotWhole(SourceSpan at, int most) => Problem.Error(
        "B1262", at, $"{Quoted.Of(at)} is not a day of a cycle", $"expected a whole number from 0 to {most}");

    public static Diagnostic SeveralRegions(SourceSpan at, IReadOnlyList<string> regions) => Problem.Error(
        "B1263", at, "teams come to several regions, and the programme names none", $"they come to {Phrases.And([.. regions.Select(Quoted.Of)])}",
        $"add a line such as `region \"{regions[0]}\"`");

    public static Diagnostic TreatmentStandsStill(SourceSpan at, int sessions) => Problem.Warning(
        "B1267", at, $"this day stands still, and the programme has {sessions} sessions", "whoever is treated for a later session is judged on that session's own day",
        "reckon it from another date, such as `date first treatment 16 days before first transfer`");

    private static Diagnostic Collections(SourceSpan at, string found, string expected, string? help = null) => Problem.Error("B1250", at, found, expected, help);
}
