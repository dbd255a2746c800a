namespace Byrelaw.Language.Diagnostics;

/// <summary>Declarations that say too little, too much, or the impossible.</summary>
internal static class WordProblems
{
    public static Diagnostic ClauseTwice(SourceSpan at) => Problem.Error(
        "B0501", at, $"{Quoted.Of(at)} says something that is said already", "each thing is said once in a declaration");

    public static Diagnostic MissingType(SourceSpan at, string name, string wanted) => Problem.Error(
        "B0502", at, $"{Quoted.Of(name)} is declared without saying what it looks like", $"expected {wanted}");

    public static Diagnostic UnknownMark(SourceSpan at, string? near) => Problem.Error(
        "B0515", at, $"{Quoted.Of(at)} is no step of a programme", "an event marks `collection`, `treatment` or `transfer`", near is null ? null : $"did you mean {Quoted.Of(near)}?")
        .OrAny(near is null ? [] : [new Proposal(at, near)]);

    public static Diagnostic ScaleBackwards(SourceSpan at) => Problem.Error(
        "B0503", at, "this scale has no length", "a scale goes from a lower to a higher number")
        .OrAny(at.Text.Split(' ') is ["on", "scale", var from, "to", var to] ? [new Proposal(at, $"on scale {to} to {from}")] : []);

    public static Diagnostic MolarMassOutOfRange(SourceSpan at) => Problem.Error(
        "B0504", at, $"{Quoted.Of(at)} is not the molar mass of anything", "expected grams per mole, from 1 to 1000000");

    public static Diagnostic MolarMassWithoutConcentration(SourceSpan at, string name) => Problem.Error(
        "B0505", at, $"{Quoted.Of(name)} is not a concentration", "a molar mass converts between mass and amount of substance in a concentration");

    public static Diagnostic ValueTwice(SourceSpan at) => Problem.Error(
        "B0506", at, $"{Quoted.Of(at)} stands twice", "each answer or value is named once");

    public static Diagnostic SaysInCalf(SourceSpan at, string name, string answer) => Problem.Error(
        "B0516", at, $"{Quoted.Of(name)} may say that a calf was found, and {Quoted.Of(answer)} does not", "another name for an answer says the same as the answer",
        "if it is another answer, declare a test of your own that has it");

    public static Diagnostic StillToCome(SourceSpan at, string name, string kind) => Problem.Error(
        "B0518", at, $"{Quoted.Of(name)} may say that its {kind} is still to come", $"another name for {Quoted.Of(kind)} says that it has happened",
        "a row of this word then ends no pregnancy: declare it as an event of its own");

    public static Diagnostic NoValuesToAddTo(SourceSpan at, string name, bool isTest) => Problem.Error(
        "B0517", at, isTest ? $"{Quoted.Of(name)} is a test, and its answers stand with the test" : $"{Quoted.Of(name)} has no values that somebody listed", "values are added to a fact that is declared with `is one of`",
        isTest ? "declare a test of your own that has that answer" : null);

    public static Diagnostic SameEventTwice(SourceSpan at, string name) => Problem.Error(
        "B0507", at, $"{Quoted.Of(name)} starts and ends the spell", "a spell lies between two different events");

    public static Diagnostic DetailNamedAsColumn(SourceSpan at, string name) => Problem.Error(
        "B0508", at, $"{Quoted.Of(name)} is a column of the records anyway", "a detail has a name of its own");

    public static Diagnostic DetailTwice(SourceSpan at, string name) => Problem.Error(
        "B0509", at, $"the detail {Quoted.Of(name)} is declared twice", "each detail of an event, measure or test is declared once");

    public static Diagnostic DetailOfFact(SourceSpan at, string name) => Problem.Error(
        "B0510", at, $"{Quoted.Of(name)} is a fact", "only an event, a measure or a test has details: they are known of one entry on one day");

    public static Diagnostic BlankOfWhat(SourceSpan at) => Problem.Error(
        "B0511", at, $"{Quoted.Of(at)} follows no detail", "what a blank cell counts as is said right after the detail", "such as `with method is one of ultrasound, hand, blank is hand`");

    public static Diagnostic BlankIsNoValue(SourceSpan at, string detail, ImmutableArray<string> values) => Problem.Error(
        "B0512", at, $"{Quoted.Of(at)} is no value of the detail {Quoted.Of(detail)}",
        values.IsEmpty ? "only a detail that is one of some values says what blank counts as" : $"expected {Quoted.Either(values)}")
        .OrAny(values.Select(value => new Proposal(at, value)));

    public static Diagnostic PlausibleBackwards(SourceSpan at) => Problem.Error(
        "B0513", at, "no value lies between these", "`plausible` names the lower number first")
        .OrAny(at.Text.Split(' ') is ["plausible", var from, "to", var to] ? [new Proposal(at, $"plausible {to} to {from}")] : []);

    public static Diagnostic PlausibleOfNoNumber(SourceSpan at, string name) => Problem.Error(
        "B0514", at, $"{Quoted.Of(name)} is not a number", "only numbers and amounts are plausible or not");
}
