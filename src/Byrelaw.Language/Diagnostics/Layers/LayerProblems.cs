namespace Byrelaw.Language.Diagnostics;

/// <summary>Changes, drops, waivers and acceptances that do not fit what they are about.</summary>
internal static class LayerProblems
{
    public static Diagnostic UnknownRule(SourceSpan at, string name, (string Name, SourceSpan Span)? near) => Problem.Error(
        "B0701", at, $"there is no rule {Quoted.Of(name)}", null,
        near is var (other, place) ? $"did you mean {Quoted.Of(other)} ({Quoted.Place(place)})?" : null)
        .OrAny(near is null ? [] : [new Proposal(at, $"\"{near.Value.Name}\"")]);

    public static Diagnostic NotUnderThisFile(SourceSpan at, string name, SourceSpan rule) => Problem.Error(
        "B0702", at, $"{Quoted.Of(name)} stands in a file that this one does not use ({Quoted.Place(rule)})",
        "a file changes only what it uses", "add a `use` for that file");

    public static Diagnostic NoBecause(SourceSpan at, string block) => Problem.Error(
        "B0703", at, $"this `{block}` gives no reason", "what differs from the agreed rules carries its reason", "add `because \"...\"`");

    public static Diagnostic NoAgreement(SourceSpan at, string block) => Problem.Error(
        "B0704", at, $"nobody has agreed to this `{block}`", "what differs from the agreed rules is agreed by someone on a day",
        "add `agreed by \"herd vet\" on 2026-06-14`, with who and when");

    public static Diagnostic SafetyStands(SourceSpan at, string name, string done, SourceSpan rule) => Problem.Error(
        "B0705", at, $"{Quoted.Of(name)} is a safety rule ({Quoted.Place(rule)})", $"a safety rule cannot be {done}");

    public static Diagnostic Conflict(SourceSpan at, string name, SourceSpan other) => Problem.Error(
        "B0706", at, $"two files change {Quoted.Of(name)}", $"the other is {Quoted.Place(other)}",
        "settle it with a `change` of its own in the file that uses both, which states each line that both change");

    public static Diagnostic LineOfARule(SourceSpan at, string name) => Problem.Error(
        "B0707", at, $"{Quoted.Of(name)} is a preference", "this line belongs to a rule");

    public static Diagnostic LineOfAPreference(SourceSpan at, string name) => Problem.Error(
        "B0708", at, $"{Quoted.Of(name)} is a rule", "this line belongs to a preference", "what a rule demands starts with `needs`");

    public static Diagnostic NoUntil(SourceSpan at) => Problem.Error(
        "B0709", at, "this waiver has no end", "a waiver has a line such as `until 2026-10-31`");

    public static Diagnostic UntilBeforeAgreed(SourceSpan at) => Problem.Error(
        "B0710", at, "this waiver ends before it is agreed", "it holds from the agreed day to this one");

    public static Diagnostic Dropped(SourceSpan at, string name, SourceSpan drop) => Problem.Error(
        "B0711", at, $"{Quoted.Of(name)} is dropped ({Quoted.Place(drop)})", "a dropped rule is neither changed nor waived");

    public static Diagnostic PreferenceStays(SourceSpan at, string name, string done) => Problem.Error(
        "B0712", at, $"{Quoted.Of(name)} is a preference", $"only a rule is {done}", "to take away its weight change it to `counts 0`");

    public static Diagnostic ChangesNothing(SourceSpan at) => Problem.Error(
        "B0713", at, "this `change` changes nothing", "it states the lines that differ");

    public static Diagnostic NothingCalled(SourceSpan at, string name, string? near) => Problem.Error(
        "B0714", at, $"nothing is called {Quoted.Of(name)}", "what is accepted is a rule, a preference or a name that a file declares",
        near is null ? null : $"did you mean {Quoted.Of(near)}?");

    public static Diagnostic Lapsed(SourceSpan at, string until, string list, SourceSpan choice) => Problem.Warning(
        "B0715", at, $"this waiver has lapsed: it ends on {until}", $"{Quoted.Of(list)} is judged later ({Quoted.Place(choice)})",
        "take it out, or agree on a new one");

    public static Diagnostic NotYet(SourceSpan at, string agreed, string list, SourceSpan choice) => Problem.Warning(
        "B0716", at, $"this waiver begins when it is agreed, on {agreed}", $"{Quoted.Of(list)} is judged before that ({Quoted.Place(choice)})");

    public static Diagnostic AgreedLater(SourceSpan at, LocalDate on, LocalDate today) => Problem.Warning(
        "B0830", at, $"agreed on {Iso(on)}; today is {Iso(today)}", "what was agreed to is not in force before that day",
        "if it was agreed already, correct the day");

    private static string Iso(LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);
}
