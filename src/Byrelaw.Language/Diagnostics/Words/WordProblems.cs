namespace Byrelaw.Language.Diagnostics;

/// <summary>Declarations that say too little, too much, or the impossible.</summary>
internal static class WordProblems
{
    public static Diagnostic ClauseTwice(SourceSpan at) => Problem.Error(
        "B0501", at, $"{Quoted.Of(at)} says something that is said already", "each thing is said once in a declaration");

    public static Diagnostic MissingType(SourceSpan at, string name, string wanted) => Problem.Error(
        "B0502", at, $"{Quoted.Of(name)} is declared without saying what it looks like", $"expected {wanted}");

    public static Diagnostic ScaleBackwards(SourceSpan at) => Problem.Error(
        "B0503", at, "this scale has no length", "a scale goes from a lower to a higher number")
        .OrAny(at.Text.Split(' ') is ["on", "scale", var from, "to", var to] ? [new Proposal(at, $"on scale {to} to {from}")] : []);

    public static Diagnostic MolarMassOutOfRange(SourceSpan at) => Problem.Error(
        "B0504", at, $"{Quoted.Of(at)} is not the molar mass of anything", "expected grams per mole, from 1 to 1000000");

    public static Diagnostic MolarMassWithoutConcentration(SourceSpan at, string name) => Problem.Error(
        "B0505", at, $"{Quoted.Of(name)} is not a concentration", "a molar mass converts between mass and amount of substance in a concentration");

    public static Diagnostic ValueTwice(SourceSpan at) => Problem.Error(
        "B0506", at, $"{Quoted.Of(at)} stands twice", "each answer or value is named once");

    public static Diagnostic SameEventTwice(SourceSpan at, string name) => Problem.Error(
        "B0507", at, $"{Quoted.Of(name)} starts and ends the spell", "a spell lies between two different events");
}
