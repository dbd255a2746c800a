namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a farm's programme and with what it says of its records.</summary>
internal static class FarmProblems
{
    public static Diagnostic SecondBlock(SourceSpan at, string what, SourceSpan first) => Problem.Error(
        "B0801", at, $"a second `{what}` stands here", $"a farm's file has one: it starts in line {first.Line}");

    public static Diagnostic DateTwice(SourceSpan at, string name) => Problem.Error(
        "B0802", at, $"the date {Quoted.Of(name)} is set twice", "each date is set once");

    public static Diagnostic DateNotSet(SourceSpan at, string name) => Problem.Error(
        "B0803", at, $"the programme does not set {Quoted.Of(name)}", null, name switch
        {
            "collection" => "add a line such as `collection on 2026-10-12`",
            "first transfer" or "final transfer" => "add a line such as `transfer 8 days after collection, over 2 days`",
            _ => $"add a line such as `date {name} on 2026-10-26`",
        });

    public static Diagnostic DateNeeded(SourceSpan at, string name, string rule, SourceSpan place) => Problem.Error(
        "B0804", at, $"the programme does not set {Quoted.Of(name)}", $"the rule {Quoted.Of(rule)} speaks of it ({Quoted.Place(place)})");

    public static Diagnostic NoRulesFor(SourceSpan at, string list, (string Name, SourceSpan Span)? near) => Problem.Error(
        "B0805", at, $"there are no rules for {Quoted.Of(list)}", "a list is judged by rules", near is var (name, place)
            ? $"did you mean {Quoted.Of(name)} ({Quoted.Place(place)})?" : null)
        .OrAny(near is null ? [] : [new Proposal(at, near.Value.Name)]);

    public static Diagnostic ChosenTwice(SourceSpan at, string list) => Problem.Error(
        "B0806", at, $"{Quoted.Of(list)} is chosen twice", "each list is drawn up once");

    public static Diagnostic JudgedBackwards(SourceSpan at) => Problem.Error(
        "B0807", at, "the last judging day is before the first", "`judged from` names the earlier one first")
        .OrAny(at.Text.Split(" to ") is [var first, var last] ? [new Proposal(at, $"{last} to {first}")] : []);

    public static Diagnostic NotAList(SourceSpan at, string name) => Problem.Error(
        "B0808", at, $"{Quoted.Of(name)} is not a list chosen above", "expected `females`, `cows`, `heifers`, animals' numbers in quotes, or an earlier list");

    public static Diagnostic CompleteTwice(SourceSpan at, string name) => Problem.Error(
        "B0809", at, $"{Quoted.Of(name)} is said to be complete twice on the same days", "each kind is promised once for a day; stretches of one kind may not meet");

    public static Diagnostic UntilBeforeSince(SourceSpan at) => Problem.Error(
        "B0820", at, $"{Quoted.Of(at)} is before the day from which these records are kept", "`since` names the first day, `until` the last");

    public static Diagnostic UpToBeyondToday(SourceSpan at, LocalDate today) => Problem.Error(
        "B0831", at, $"{Quoted.Of(at)} has not come yet: today is {NodaTime.Text.LocalDatePattern.Iso.Format(today)}", "records reach no further than today, so this line does not count",
        "write the last day up to which all is written down");

    public static Diagnostic LeftOutButDeclared(SourceSpan at, string name, SourceSpan? declared) => Problem.Error(
        "B0810", at, $"{Quoted.Of(name)} is declared{(declared is { } place ? $" ({Quoted.Place(place)})" : "")}", "only kinds that nobody declares are left out");

    public static Diagnostic ChoosesNothing(SourceSpan at) => Problem.Warning(
        "B0811", at, "this programme draws up no list", null, "add a line such as `choose recipients from females, judged on collection`");

    public static Diagnostic NotDays(SourceSpan at) => Problem.Error(
        "B0812", at, $"{Quoted.Of(at)} is not a number of days from 1 to 60", "transfers go over days")
        .OrAny(at.Text.Split(' ') is [var count, "week" or "weeks"] && int.TryParse(count, CultureInfo.InvariantCulture, out var weeks) ? [new Proposal(at, $"{weeks * 7} days")] : []);

    public static Diagnostic BlankOfWhat(SourceSpan at, string detail, string value, ImmutableArray<string> kinds) => Problem.Error(
        "B0839", at, kinds.IsEmpty ? $"no event, measure or test has a detail {Quoted.Of(detail)} that can be {Quoted.Of(value)}" : $"{Quoted.Of(detail)} can be {Quoted.Of(value)} of more than one: {string.Join(", ", kinds)}",
        "a line that says what blank cells mean is about one of them",
        kinds.IsEmpty ? "look for the spelling, or declare it, as in `add to pregnancy test  with method is one of ultrasound, hand`" : $"write `{detail} of {kinds[0]} is {value}`");

    public static Diagnostic OneNumber(SourceSpan at) => Problem.Error(
        "B0827", at, "one number is compared with nothing", "expected two numbers or more, such as `same animal \"301\", \"1301\"`");

    public static Diagnostic ComparedWithoutReason(SourceSpan at, bool noReason, bool noAgreement) => Problem.Error(
        "B0828", at, noReason && noAgreement ? "this has no reason, and nobody has agreed to it" : noReason ? "this has no reason" : "nobody has agreed to this",
        "it undoes a doubt about the records, so a person answers for it",
        "write below it, such as `because \"Both tags read.\"` and `agreed by \"farmer\" on 2026-09-20`");

    public static Diagnostic SameAndNot(SourceSpan at, SourceSpan other) => Problem.Error(
        "B0829", at, $"two of these numbers are one animal here, and two animals there ({Quoted.Place(other)})", "they are one or the other");

    public static Diagnostic AnimalTwice(SourceSpan at) => Problem.Error(
        "B0813", at, $"{Quoted.Of(at)} stands twice", "each animal is named once");
}
