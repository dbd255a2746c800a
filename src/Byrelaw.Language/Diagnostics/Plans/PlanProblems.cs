namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with any statement of a plan: its layers, its numbers, its reasons.</summary>
internal static class PlanProblems
{
    public static Diagnostic Twice(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B1201", at, $"{Quoted.Of(name)} is said twice", $"it stands in line {first.Line} of this file already", "keep one of the two");

    public static Diagnostic ReplacedWithoutReason(SourceSpan at, string name, SourceSpan before, string help) => Problem.Error(
        "B1202", at, $"{Quoted.Of(name)} replaces what stands in {Quoted.Place(before)}, and gives no reason",
        "what differs from the agreed statements carries its reason", help);

    public static Diagnostic Conflict(SourceSpan at, string name, SourceSpan other) => Problem.Error(
        "B1203", at, $"{Quoted.Of(name)} is also said in {Quoted.Place(other)}, and neither file uses the other", "nobody can tell which of them counts",
        "say it once more, with a reason, in the file that uses both");

    public static Diagnostic NotAShare(SourceSpan at) => Problem.Error(
        "B1204", at, $"{Quoted.Of(at)} is no share", "a share is from 0% to 100%", "`80%` means 80 of every 100");

    public static Diagnostic NotACount(SourceSpan at, string wanted) => Problem.Error(
        "B1205", at, $"{Quoted.Of(at)} does not fit here", $"expected {wanted}");

    public static Diagnostic CountDisagrees(SourceSpan at, SourceSpan share, int hits, int of)
    {
        var counted = string.Create(CultureInfo.InvariantCulture, $"{100.0 * hits / of:0.#}%");
        return Problem.Error("B1206", at, $"{hits} of {of} is {counted}, not {share.Text}", "the count and the share must say the same", $"did you mean `{counted}`?")
            .Or(new Proposal(share, counted));
    }

    public static Diagnostic EvidenceDoesNotFit(SourceSpan at, string wanted) => Problem.Error(
        "B1207", at, $"{Quoted.Of(at)} does not fit this number", wanted);

    public static Diagnostic BeforeCountsDays(SourceSpan at, TimeLength wait) => Problem.Error(
        "B1208", at, $"{Quoted.Of(at)} cannot be counted back", "months and years are of several lengths: count back in `days` or `weeks`")
        .Or(new Proposal(at, $"{wait.Count * (wait.Unit == TimeUnit.Years ? 365 : 30)} days"));

    public static Diagnostic NoReason(SourceSpan at, string what) => Problem.Warning(
        "B1209", at, $"this {what} gives neither a reason nor a source", null, "add `because \"...\"` or `source \"...\"`");

    public static Diagnostic CurrencyMissing(SourceSpan at) => Problem.Error(
        "B1260", at, $"{Quoted.Of(at)} is no currency", "a currency has three capital letters, such as `NZD`")
        .OrAny(at.Length == 3 ? [new Proposal(at, at.Text.ToUpperInvariant())] : []);

    public static Diagnostic TwoCurrencies(SourceSpan at, string currency, string first, SourceSpan place) => Problem.Error(
        "B1261", at, $"this is in {currency}", $"all money of a plan is in one currency: {first} in {Quoted.Place(place)}",
        $"nothing is converted: write what it is in {first}");
}
