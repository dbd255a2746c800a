namespace Byrelaw.Language.Diagnostics;

/// <summary>Rules, preferences and defines that lack something or say too much.</summary>
internal static class RuleProblems
{
    public static Diagnostic NoList(SourceSpan at) => Problem.Error(
        "B0601", at, "it is not said which list this is for", "a line such as `rules for recipients` stands above it");

    public static Diagnostic NoNeeds(SourceSpan at) => Problem.Error(
        "B0602", at, "this rule needs nothing", "a rule has a line that starts with `needs`");

    public static Diagnostic NoCondition(SourceSpan at, string block) => Problem.Error(
        "B0603", at, $"this `{block}` has no condition", "expected a condition on a line below it");

    public static Diagnostic NoBecause(SourceSpan at, string block) => Problem.Warning(
        "B0604", at, $"this {block} gives no reason", null, "add `because \"...\"`: every number carries its reason");

    public static Diagnostic NameTaken(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B0605", at, $"the name {Quoted.Of(name)} is taken", $"there is such a rule or preference already ({Quoted.Place(first)})",
        "to replace a rule of another file write `change` instead");

    public static Diagnostic SafetyPasses(SourceSpan at) => Problem.Error(
        "B0606", at, "a safety rule cannot be passed where it is not known", "expected `ask` or `exclude`")
        .Or(new Proposal(at, "if not known ask"));

    public static Diagnostic ForSome(SourceSpan at, string? lines) => Problem.Error(
        "B0341", at, $"{Quoted.Of(at)} says whom a rule is for", "a rule says so with `applies to` and a defined name",
        lines is null ? "where the rule has `applies to` already, define one name that holds both, as `all of`, and apply that" : "write these lines; `because` and what follows stay below") with
    { Lines = lines, IsHelpTried = true };
}
