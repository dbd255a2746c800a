using Byrelaw.Language.Sources;

namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with any statement of a plan: its layers, its numbers, its reasons.</summary>
internal static class PlanProblems
{
    public static Diagnostic Twice(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B1201", at, $"{Quoted.Of(name)} is said twice", $"it stands in line {first.Line} of this file already");

    public static Diagnostic ReplacedWithoutReason(SourceSpan at, string name, SourceSpan before) => Problem.Error(
        "B1202", at, $"{Quoted.Of(name)} replaces what {Quoted.Place(before)} says, and gives no reason", "what differs from the agreed statements carries its reason",
        "add `because \"...\"`");

    public static Diagnostic Conflict(SourceSpan at, string name, SourceSpan other) => Problem.Error(
        "B1203", at, $"{Quoted.Of(name)} is also said in {Quoted.Place(other)}, and neither file uses the other", null,
        "say it once more, with a reason, in the file that uses both");

    public static Diagnostic NotAShare(SourceSpan at) => Problem.Error(
        "B1204", at, $"{Quoted.Of(at)} is no share", "a share is from 0% to 100%");

    public static Diagnostic NotACount(SourceSpan at, string wanted) => Problem.Error(
        "B1205", at, $"{Quoted.Of(at)} does not fit here", $"expected {wanted}");

    public static Diagnostic CountDisagrees(SourceSpan at, double written, int hits, int of) => Problem.Error(
        "B1206", at, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{hits} of {of} is {100.0 * hits / of:0.#}%, not {100 * written:0.##}%"),
        "the count and the share say the same");

    public static Diagnostic EvidenceDoesNotFit(SourceSpan at, string wanted) => Problem.Error(
        "B1207", at, $"{Quoted.Of(at)} does not fit this number", wanted);

    public static Diagnostic BeforeCountsDays(SourceSpan at) => Problem.Error(
        "B1208", at, $"{Quoted.Of(at)} cannot be counted back", "months and years are of several lengths: count back in `days` or `weeks`");

    public static Diagnostic NoReason(SourceSpan at, string what) => Problem.Warning(
        "B1209", at, $"this {what} gives neither a reason nor a source", null, "add `because \"...\"` or `source \"...\"`");

    public static Diagnostic CurrencyMissing(SourceSpan at) => Problem.Error(
        "B1260", at, $"{Quoted.Of(at)} is no currency", "a currency has three capital letters, such as `NZD`");

    public static Diagnostic TwoCurrencies(SourceSpan at, string currency, string first, SourceSpan place) => Problem.Error(
        "B1261", at, $"this is in {currency}", $"all money of a plan is in one currency: {first} in {Quoted.Place(place)}");
}
