namespace Byrelaw.Language.Diagnostics;

/// <summary>What a safety rule cannot be, and what nobody can make of one.</summary>
internal static class SafetyProblems
{
    public static Diagnostic CannotBeChanged(SourceSpan at, string name, SourceSpan rule) => Problem.Error(
        "B0719", at, $"{Quoted.Of(name)} is a safety rule ({Quoted.Place(rule)}), and this line could only take away from it",
        "a change of a safety rule adds to what it asks", "it may state `needs`, `if not known exclude`, `because` and `source`; take this line out");

    public static Diagnostic AsksLess(SourceSpan at, string name, string before, SourceSpan rule) => Problem.Error(
        "B0720", at, $"{Quoted.Of(name)} is a safety rule, and this asks no more than it asked: {Quoted.Of(before)} ({Quoted.Place(rule)})",
        "a change of a safety rule adds to what it asks", "ask for more, or take the change out: what was asked is asked in any case");

    public static Diagnostic AsksBesides(SourceSpan at, string name, string before, SourceSpan rule) => Problem.Warning(
        "B0721", at, $"{Quoted.Of(name)} is a safety rule, and this is not proved to ask all that it asked: {Quoted.Of(before)} ({Quoted.Place(rule)})",
        "a change of a safety rule adds to what it asks, so both are asked", "to make it stricter write what it asked again, with another number or with more kinds after `no`");

    public static Diagnostic OnTheDay(SourceSpan at) => Problem.Error(
        "B0722", at, "a safety rule cannot be left to the day", "its answer must be known before anybody acts",
        "take this line out; what the person beside the animal must look at stands in a rule of its own");

    public static Diagnostic MetByWhatIsLost(SourceSpan at, string name, string what) => Problem.Error(
        "B0723", at, $"{Quoted.Of(name)} is a safety rule, and it can be met by {Quoted.Of(what)} not being written down", "what is lost or forgotten must never let an animal through",
        "ask for what the records do say");

    public static Diagnostic NeverFails(SourceSpan at, string name) => Problem.Error(
        "B0724", at, $"{Quoted.Of(name)} is a safety rule, and no animal that it applies to can ever fail it", "a safety rule bars somebody",
        "mend the limit that asks nothing, or take the rule out");

    public static Diagnostic PassingNotAccepted(SourceSpan at, string name, SourceSpan rule) => Problem.Error(
        "B0725", at, $"{Quoted.Of(name)} is a safety rule ({Quoted.Place(rule)})", "what is not known is never passed by a safety rule, so there is nothing to accept", "take this out");
}
