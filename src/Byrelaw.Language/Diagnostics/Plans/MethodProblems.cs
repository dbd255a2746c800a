using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a method.</summary>
internal static class MethodProblems
{
    public static Diagnostic DoesNothing(SourceSpan at) => Problem.Error(
        "B1210", at, "this method does nothing", "expected treatments such as `day 0 \"...\"`, or `cycles every 21 days`");

    public static Diagnostic TreatsNaturalHeat(SourceSpan at) => Problem.Error(
        "B1211", at, $"{Quoted.Of(at)} does not go with `cycles every`", "a natural heat comes without treatment, on any day");

    public static Diagnostic StepsOutOfOrder(SourceSpan at) => Problem.Error(
        "B1212", at, $"{Quoted.Of(at)} is not after the step above it", "steps stand in the order of their days, from day 0");

    public static Diagnostic HeatBeforeTreatment(SourceSpan at, int first) => Problem.Error(
        "B1213", at, $"{Quoted.Of(at)} is before the treatment could act", $"the first treatment is on day {first}: a heat comes on a later day");

    public static Diagnostic TwoHeats(SourceSpan at) => Problem.Error(
        "B1214", at, "this method says twice when she is in heat", "`counts as heat on day N`, or `in heat P%, on day ...`, not both");

    public static Diagnostic NoHeat(SourceSpan at) => Problem.Error(
        "B1215", at, "this method does not say when she is in heat", "expected `counts as heat on day 9`, or `in heat 70%, on day 2 20%, day 3 80%`");

    public static Diagnostic SpreadSum(SourceSpan at, double sum) => Problem.Error(
        "B1216", at, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"the days' shares come to {sum:0.##}%"), "together they are all heats: 100%");

    public static Diagnostic HoursDisagree(SourceSpan at, string expected) => Problem.Error(
        "B1217", at, $"{Quoted.Of(at)} does not fit the days", $"between those steps lie {expected} hours, a morning to a morning being 24");

    public static Diagnostic FlushOnlyForDonors(SourceSpan at) => Problem.Error(
        "B1218", at, "recipients are not flushed", "`flushed on day N` stands in a method `for donors`");

    public static Diagnostic FlushMissing(SourceSpan at) => Problem.Error(
        "B1219", at, "this method for donors does not say when they are flushed", "expected `flushed on day N`, after the day that counts as heat");

    public static Diagnostic AgainOutOfOrder(SourceSpan at) => Problem.Error(
        "B1220", at, "the second chance is not after the first", "`if not seen by day 5, again on day 11 to 14` names later days from left to right");

    public static Diagnostic AgainWithoutHeats(SourceSpan at) => Problem.Error(
        "B1221", at, "a second chance needs heats that may be missed", "it goes with `in heat P%, on day ...`");

    public static Diagnostic OnlyForDonors(SourceSpan at) => Problem.Error(
        "B1222", at, $"{Quoted.Of(at)} is not whom a method may be for", "expected `for donors`; every other method is for recipients");
}
