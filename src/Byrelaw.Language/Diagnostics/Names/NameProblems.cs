namespace Byrelaw.Language.Diagnostics;

/// <summary>Names that mean nothing, something else, or two things.</summary>
internal static class NameProblems
{
    private const int MostOfACircle = 20;

    public static Diagnostic Taken(SourceSpan at, string name, Symbol taken) => taken.Declared is { } first
        ? Problem.Error(
            "B0201", at, $"the name {Quoted.Of(name)} is taken", $"it is {taken.Sort} already ({Quoted.Place(first)})",
            "give one of them another name; other words for the same thing go after `also` in one place")
        : BuiltIn(at, name, taken);

    public static Diagnostic BuiltIn(SourceSpan at, string name, Symbol taken) => Problem.Error(
        "B0202", at, $"the name {Quoted.Of(name)} is taken", $"it is {taken.Sort} that is always there", "choose another name");

    public static Diagnostic AnswerReadsAsName(SourceSpan at, string phrase, string otherSort, string test) => Problem.Error(
        "B0203", at, $"{Quoted.Of(phrase)} can be read two ways",
        $"as {otherSort} of its own and as an answer of the test {Quoted.Of(test)}", "give one of them another name");

    public static Diagnostic Unknown(SourceSpan at, string name, string wanted, (string Spelling, Symbol Symbol)? near) => Problem.Error(
        "B0204", at, $"{Quoted.Of(name)} is not {wanted}", null,
        near is var (spelling, symbol) ? DidYouMean(name, spelling, symbol) : "if it is spelt as meant, a line of a vocabulary file has to declare it")
        .OrAny(Instead(at, near?.Spelling));

    public static Diagnostic WrongSort(SourceSpan at, Symbol found, string wanted, string? help = null) => Problem.Error(
        "B0205", at, $"{Quoted.Of(at)} is {found.Sort}{(found.Declared is { } place ? $" ({Quoted.Place(place)})" : "")}", $"expected {wanted}", help);

    public static Diagnostic NoSuchAnswer(SourceSpan at, string answer, string test, IReadOnlyList<string> answers) => Problem.Error(
        "B0206", at, $"{Quoted.Of(answer)} is not an answer of {Quoted.Of(test)}", answers.Count == 0 ? null : $"its answers are {Quoted.Either(answers)}",
        NearestName.To(answer, answers) is { } near ? $"did you mean `{near}`?" : null)
        .OrAny(Instead(at, NearestName.To(answer, answers) is { } meant ? at.Text.Replace(answer, meant, StringComparison.Ordinal) : null));

    public static Diagnostic NoSuchValue(SourceSpan at, string value, string fact, IReadOnlyList<string> values) => Problem.Error(
        "B0207", at, $"{Quoted.Of(value)} is not a value of {Quoted.Of(fact)}", values.Count == 0 ? null : $"its values are {Quoted.Either(values)}",
        NearestName.To(value, values) is { } near ? $"did you mean `{near}`?" : null)
        .OrAny(Instead(at, NearestName.To(value, values)));

    public static Diagnostic CircleOfDefines(SourceSpan at, IReadOnlyList<string> names) => Problem.Error(
        "B0208", at, $"{Quoted.Of(names[0])} is defined by itself", $"the circle is {string.Join(" -> ", names.Take(MostOfACircle).Select(Quoted.Of))}{(names.Count > MostOfACircle ? " -> ..." : "")}",
        "a define may use only what stands without it");

    public static Diagnostic ChainTooDeep(SourceSpan at, string name, int most) => Problem.Error(
        "B0209", at, $"{Quoted.Of(name)} stands at the end of a chain of more than {most} defines", $"at most {most} may use each other in a row");

    public static Diagnostic DateNameStartsWithLast(SourceSpan at) => Problem.Error(
        "B0210", at, $"the name {Quoted.Of(at)} begins with `last`", "`last` always speaks of what happened to an animal", "call it `final ...`")
        .Or(new Proposal(at, at.Text.Replace("last", "final", StringComparison.OrdinalIgnoreCase)));

    public static Diagnostic Empty(SourceSpan at) => Problem.Error("B0211", at, "this name is empty", "a name has at least one letter");

    private static IEnumerable<Proposal> Instead(SourceSpan at, string? meant) => meant is null ? [] : [new Proposal(at, meant)];

    private static string DidYouMean(string written, string spelling, Symbol symbol)
    {
        var place = symbol.Declared is { } declared ? $" ({Quoted.Place(declared)})" : "";
        var isPlural = written.Length == spelling.Length + 1 && written.EndsWith('s') && written.StartsWith(spelling, StringComparison.OrdinalIgnoreCase);
        return isPlural
            ? $"did you mean {Quoted.Of(spelling)}{place}? no plural is known by itself: declare it there with `also {written}`"
            : $"did you mean {Quoted.Of(spelling)}{place}?";
    }
}
