namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a method.</summary>
internal static class MethodProblems
{
    public static Diagnostic DoesNothing(SourceSpan at) => Problem.Error(
        "B1210", at, "this method does nothing", "expected treatments such as `day 0 \"...\"`, or `cycles every 21 days`");

    public static Diagnostic TreatsNaturalHeat(SourceSpan at) => Problem.Error(
        "B1211", at, $"{Quoted.Of(at)} does not go with `cycles every`", "a natural heat comes without treatment, on any day", "keep this line, or `cycles every`, not both");

    /// <param name="at">The step's day.</param>
    /// <param name="above">The day of the step above it; null for the first step.</param>
    public static Diagnostic StepsOutOfOrder(SourceSpan at, string? above) => Problem.Error(
        "B1212", at, above is null ? $"the first step is on day {at.Text}" : $"this step on day {at.Text} stands below one {(above == at.Text ? "in the evening of that day" : $"on day {above}")}",
        above is null ? "days are counted from the first step, which is on day 0" : "steps stand in the order of their days",
        above is null ? "call it `day 0`, and count the others from it" : "move it up");

    public static Diagnostic HeatBeforeTreatment(SourceSpan at, int first) => Problem.Error(
        "B1213", at, $"{Quoted.Of(at)} is before the treatment could act", $"the first treatment is on day {first}, and a heat comes on a later day");

    public static Diagnostic TwoHeats(SourceSpan at) => Problem.Error(
        "B1214", at, "this method says twice when she is in heat", "`counts as heat on day N`, or `in heat P%, on day ...`, not both", "keep the line that is meant");

    public static Diagnostic NoHeat(SourceSpan at) => Problem.Error(
        "B1215", at, "this method does not say when she is in heat", "expected `counts as heat on day 9`, or `in heat 70%, on day 2 20%, day 3 80%`");

    public static Diagnostic SpreadSum(SourceSpan at, double sum) => Problem.Error(
        "B1216", at, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"the days' shares come to {sum:0.##}%"), "together they are all heats: 100%",
        "each share is of the heats, not of the animals treated");

    /// <param name="at">What is said of the hours.</param>
    /// <param name="hours">Their number.</param>
    /// <param name="between">How many lie between the steps; null where no earlier step is on that day.</param>
    public static Diagnostic HoursDisagree(SourceSpan at, SourceSpan hours, int? between) => Problem.Error(
        "B1217", at, $"{Quoted.Of(at)} does not fit the days", between is null
            ? "no step above this one is on that day"
            : $"between those steps lie about {between} hours, a morning to a morning being 24",
        between is > 0 ? $"did you mean `{between} hours`?" : null)
        .OrAny(between is > 0 ? [new Proposal(hours, $"{between}")] : []);

    public static Diagnostic FlushOnlyForDonors(SourceSpan at) => Problem.Error(
        "B1218", at, "recipients are not flushed", "`flushed on day N` stands in a method `for donors`", "take this line out, or add `for donors`")
        .Or(Proposal.WithSpaceBefore(at));

    /// <param name="at">The method, or the line that says when.</param>
    /// <param name="heat">The day that counts as heat, where the flush is not after it; null where there is no flush.</param>
    public static Diagnostic FlushMissing(SourceSpan at, int? heat) => Problem.Error(
        "B1219", at, heat is null ? "this method for donors does not say when they are flushed" : $"{Quoted.Of(at)} is not after the heat on day {heat}",
        heat is null ? "expected `flushed on day N`, after the day that counts as heat" : "an embryo is as old as the days from the heat to the flush");

    public static Diagnostic AgainOutOfOrder(SourceSpan at, SourceSpan days) => Problem.Error(
        "B1220", at, "the second chance is not after the first", "`if not seen by day 5, again on day 11 to 14` names later days from left to right")
        .OrAny(days.Text.Split(" to ") is [var from, var to] ? [new Proposal(days, $"{to} to {from}")] : []);

    public static Diagnostic AgainWithoutHeats(SourceSpan at) => Problem.Error(
        "B1221", at, "a second chance needs heats that may be missed", "it goes with `in heat P%, on day ...`", "take this line out: a heat that is counted is never missed")
        .Or(Proposal.WithSpaceBefore(at));

    public static Diagnostic ChosenBeforeTheDay(SourceSpan at) => Problem.Error(
        "B1223", at, "a method is chosen before the day", "`suits` is asked on the method's day 0, and says who is treated at all",
        "take this line out; what only the day shows stands in a rule for recipients")
        .Or(Proposal.WithSpaceBefore(at));

    /// <param name="at">The step.</param>
    /// <param name="goesIn">Whether it puts in a device that no later step takes out; else it takes out one that no earlier step puts in.</param>
    public static Diagnostic DeviceWithoutOther(SourceSpan at, bool goesIn) => Problem.Error(
        "B1224", at, goesIn ? "a device goes in and never comes out" : "a device comes out that never went in",
        goesIn ? "what goes in comes out, on which day?" : "what comes out went in, on which day?",
        goesIn ? "say `device out` on the step that takes it out" : "say `device in` on the step that puts it in");

    public static Diagnostic OnlyForDonors(SourceSpan at, SourceSpan line) => Problem.Error(
        "B1222", at, $"`for {at.Text}` does not fit a method", "expected `for donors`, or no such line: every other method is for recipients")
        .Or(new Proposal(at, "donors")).Or(Proposal.WithSpaceBefore(line));
}
