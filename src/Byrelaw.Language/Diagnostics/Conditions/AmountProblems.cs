using System.Text.RegularExpressions;

namespace Byrelaw.Language.Diagnostics;

/// <summary>Numbers, units and limits that do not fit what they are compared with.</summary>
internal static partial class AmountProblems
{
    public static Diagnostic NoUnit(SourceSpan at, string name, Unit unit) => Problem.Error(
        "B0307", at, $"{Quoted.Of(at)} has no unit", null, $"{name} is declared in {unit.Symbol}: write `{at.Text} {unit.Symbol}`")
        .Or(Proposal.After(at, " " + unit.Symbol));

    public static Diagnostic WrongUnit(SourceSpan at, string name, Unit unit, bool needsMolarMass) => Problem.Error(
        "B0308", at, $"{Quoted.Of(at)} is another kind of unit", $"{name} is declared in {unit.Symbol}",
        needsMolarMass ? $"to convert between mass and amount of substance declare {name} with `molar mass`" : null);

    public static Diagnostic UnknownUnit(SourceSpan at) => Problem.Error(
        "B0309", at, $"{Quoted.Of(at)} is not a unit", null,
        NearestUnit(at) is { } near ? $"did you mean `{near}`?" : null)
        .OrAny(NearestUnit(at) is { } meant ? [new Proposal(at, meant)] : []);

    public static Diagnostic UnitNotWanted(SourceSpan at, string name) => Problem.Error(
        "B0310", at, $"{Quoted.Of(at)} stands after the number", $"{name} takes a number alone", $"leave out {Quoted.Of(at)}")
        .Or(Proposal.WithSpaceBefore(at));

    public static Diagnostic OutsideScale(SourceSpan at, string name, Scale scale) => Problem.Error(
        "B0311", at, $"{Quoted.Of(at)} is outside the scale", $"{name} goes from {Text(scale.From)} to {Text(scale.To)}");

    public static Diagnostic Backwards(SourceSpan at) => Problem.Error(
        "B0312", at, "the first limit is above the second", "`between` names the lower one first")
        .OrAny(OtherWayRound(at));

    public static Diagnostic NotATime(SourceSpan at) => Problem.Error(
        "B0313", at, $"{Quoted.Of(at)} is not a length of time", "expected days, weeks, months or years", $"write `{at.Text.Split(' ')[0]} days` or `{at.Text.Split(' ')[0]} months`")
        .Or(new Proposal(at, at.Text.Split(' ')[0] + " months"));

    public static Diagnostic NotWholeTime(SourceSpan at) => Problem.Error(
        "B0314", at, $"{Quoted.Of(at)} is not a whole number from 0 to 100000", "lengths of time are whole");

    public static Diagnostic NotACount(SourceSpan at) => Problem.Error(
        "B0315", at, $"{Quoted.Of(at)} is not a whole number from 0 to 100000", "counts are whole");

    public static Diagnostic ShareOfWhat(SourceSpan at) => Problem.Error(
        "B0316", at, $"{Quoted.Of(at)} of what is not said", "a share is taken of a fact, as in `60% of mature weight`");

    public static Diagnostic ShareDoesNotFit(SourceSpan at, string share, string name) => Problem.Error(
        "B0317", at, $"a share of {Quoted.Of(share)} cannot be compared with {Quoted.Of(name)}", "both must be declared in the same unit");

    private static string? NearestUnit(SourceSpan at) => NearestName.To(at.Text, UnitTable.All.Select(unit => unit.Symbol));

    /// <summary>`between 8 and 6 days` with its numbers the other way round; a unit stays where it stands.</summary>
    private static IEnumerable<Proposal> OtherWayRound(SourceSpan at)
    {
        var limits = Limits().Match(at.Text);
        return limits.Success ? [new Proposal(at with { Length = limits.Length }, $"between {limits.Groups[3]}{limits.Groups[2]}{limits.Groups[1]}")] : [];
    }

    [GeneratedRegex(@"^between +(-?[0-9.]+)(.*? and +)(-?[0-9.]+)")]
    private static partial Regex Limits();

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
