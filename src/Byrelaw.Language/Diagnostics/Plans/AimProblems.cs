using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with what a programme wants and how it is to be planned.</summary>
internal static class AimProblems
{
    public static Diagnostic CollectionsOutOfOrder(SourceSpan at) => Problem.Error(
        "B1250", at, "the collections do not stand in order", "each is later than the one before it, and there are at most 30");

    public static Diagnostic WindowBackwards(SourceSpan at) => Problem.Error(
        "B1251", at, "the last day is before the first", "`on a visit between` names the earlier day first");

    public static Diagnostic NoVisitBetween(SourceSpan at) => Problem.Error(
        "B1252", at, "no team comes between those days", null, "look at the days of `visits \"collection\"`, and at the days off");

    public static Diagnostic VisitNotChosen(SourceSpan at, string day) => Problem.Warning(
        "B1253", at, "the visit is still to be chosen", $"until then lists are judged for the first that is possible, {day}",
        "`byrelaw plan` compares all of them; write `collection on DATE` once one is agreed");

    public static Diagnostic UnknownMethod(SourceSpan at, string name, string? near) => Problem.Error(
        "B1254", at, $"there is no method {Quoted.Of(name)}", null, near is null ? null : $"did you mean {Quoted.Of(near)}?");

    public static Diagnostic MethodForOthers(SourceSpan at, string name, string whom) => Problem.Error(
        "B1255", at, $"{Quoted.Of(name)} is a method for {whom}", null);

    public static Diagnostic CountForSeveral(SourceSpan at) => Problem.Error(
        "B1256", at, "a number of animals stands before several methods", "each method with a number has a line of its own");

    public static Diagnostic FrozenWithCollection(SourceSpan at) => Problem.Error(
        "B1257", at, "frozen embryos need no collection", "this programme has one", "write what is in the tank besides as `tank holds 6 frozen embryos`");

    public static Diagnostic NothingCollected(SourceSpan at) => Problem.Error(
        "B1258", at, "these embryos need a collection", null, "add a line such as `collection on 2026-10-12`");

    public static Diagnostic AgeFollows(SourceSpan at) => Problem.Error(
        "B1259", at, "the age of these embryos follows from the days", "an age is written for frozen embryos only");

    public static Diagnostic DayNotWhole(SourceSpan at, int most) => Problem.Error(
        "B1262", at, $"{Quoted.Of(at)} is not a day of a cycle", $"expected a whole number from 0 to {most}");

    public static Diagnostic SeveralRegions(SourceSpan at) => Problem.Error(
        "B1263", at, "teams come to several regions, and the programme names none", null, "add a line such as `region \"North\"`");
}
