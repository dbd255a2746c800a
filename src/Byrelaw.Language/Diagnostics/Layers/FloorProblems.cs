namespace Byrelaw.Language.Diagnostics;

/// <summary>Lists and the floor that lies under them.</summary>
internal static class FloorProblems
{
    private const string Under = "four safety rules of the program's own lie under it: not in calf, not dry in calf, days since service, away from the bull";

    public static Diagnostic NoWords(SourceSpan at, string list, IReadOnlyList<string> missing, IReadOnlyList<string> lines) => Problem.Error(
        "B0840", at, $"{Quoted.Of(list)} leads to a hormone or an embryo, and no file has a word for {Phrases.And([.. missing.Select(Quoted.Of)])}", Under,
        $"add the {(lines.Count == 1 ? "line" : "lines")} above, or `use base vocabulary edition {BaseEditions.Newest}`") with
    { Shown = string.Join('\n', lines) };

    public static Diagnostic CarelessWord(SourceSpan at, string word, string line) => Problem.Error(
        "B0841", at, $"{Quoted.Of(word)} is declared so that the floor cannot go by it", $"the floor goes by what is at least as careful as `{Plain(line)}`",
        "declare it so, and add what else is meant beside it");

    public static Diagnostic NameKept(SourceSpan at, string name) => Problem.Error(
        "B0717", at, $"{Quoted.Of(name)} begins with `floor`", "names that begin so are those of the floor, the program's own safety rules", "give it another name");

    public static Diagnostic NobodysToChange(SourceSpan at, string name) => Problem.Error(
        "B0718", at, $"{Quoted.Of(name)} is a rule of the floor", "the floor is the program's own: no file changes, drops, waives or passes it",
        "a scan written down with its method meets the first two of its rules; the others only time meets");

    public static Diagnostic NothingGivenElsewhere(SourceSpan at, string list) => Problem.Error(
        "B0842", at, $"{Quoted.Of(list)} cannot be `nothing given`", "only of `donors` are eggs collected with no hormone given", "take `nothing given` out");

    public static Diagnostic DrawnFromIt(SourceSpan at, string list, ListUse use) => Problem.Error(
        "B0843", at, use == ListUse.ForLookingOnly ? $"{Quoted.Of(list)} is for looking only" : $"to those on {Quoted.Of(list)} nothing is given", use == ListUse.ForLookingOnly
            ? "nobody on it is cleared for a hormone or an embryo, so no such list is drawn from it"
            : "the floor bars nobody there, so no list is drawn from it",
        "draw this list from `females`, `cows` or `heifers`");

    public static Diagnostic PreparedFromIt(SourceSpan at, string list, ListUse use) => Problem.Error(
        "B0844", at, use == ListUse.ForLookingOnly ? $"{Quoted.Of(list)} is for looking only" : $"to those on {Quoted.Of(list)} nothing is given",
        "nobody on it is treated or given an embryo", $"take this line out, or what is said of the use of {Quoted.Of(list)}");

    public static Diagnostic RulesNobodyChooses(SourceSpan at, string list, string? near, SourceSpan? choice) => Problem.Error(
        "B0845", at, $"no list {Quoted.Of(list)} is chosen, so these rules hold for nobody", near is null || choice is null ? null : $"did you mean {Quoted.Of(near)} ({Quoted.Place(choice.Value)})?",
        near is null ? $"choose it, as in `choose {list} from females, judged on collection`, or take the rules out" : null)
        .OrAny(near is null ? [] : [new Proposal(at, near)]);

    private static string Plain(string line) => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
