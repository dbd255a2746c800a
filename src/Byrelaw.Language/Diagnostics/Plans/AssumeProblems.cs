namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with an assumption or a price.</summary>
internal static class AssumeProblems
{
    public static Diagnostic Unknown(SourceSpan at, string? near) => Problem.Error(
        "B1245", at, $"{Quoted.Of(at)} is not something a plan rests on", "`byrelaw check --explain B1245` lists what may be assumed", near is null ? null : $"did you mean `{near}`?")
        .OrAny(near is null ? [] : [new Proposal(at, near)]);

    public static Diagnostic WrongValue(SourceSpan at, string quantity, string wanted, string? meant) => Problem.Error(
        "B1246", at, $"{Quoted.Of(at)} does not fit {Quoted.Of(quantity)}", $"expected {wanted}", meant is null ? null : $"did you mean `{meant}`?")
        .OrAny(meant is null ? [] : [new Proposal(at, meant)]);

    public static Diagnostic TakenAsExact(SourceSpan at) => Problem.Warning(
        "B1247", at, "this share says nothing of what it rests on", "it is taken as exact", "add `, from 36 of 80` for a count, `, weight 20` for an opinion, or a `source`");

    public static Diagnostic KeptTwice(SourceSpan at, SourceSpan other) => Problem.Error(
        "B1248", at, "what is kept to calving is said twice", $"in two steps here, and in one in {Quoted.Place(other)}", "keep the one line, or the two steps");

    public static Diagnostic AllInAndItemised(SourceSpan at, string other, SourceSpan place) => Problem.Error(
        "B1249", at, "`cost per embryo transferred` pays for everything that the team does", $"{Quoted.Of(other)} in {Quoted.Place(place)} would be paid twice",
        "keep this line or the others");
}
