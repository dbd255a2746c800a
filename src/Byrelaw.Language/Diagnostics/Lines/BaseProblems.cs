namespace Byrelaw.Language.Diagnostics;

/// <summary>Lines that use the program's own rule files by name and edition.</summary>
internal static class BaseProblems
{
    public static Diagnostic NoSuchFile(SourceSpan at, string name, IReadOnlyList<string> names) => Problem.Error(
        "B0009", at, $"the program has no base file {Quoted.Of(name)}", $"there are {Phrases.And([.. names.Select(Quoted.Of)])}",
        NearestName.To(name, names) is { } near ? $"did you mean {Quoted.Of(near)}?" : null)
        .OrAny(NearestName.To(name, names) is { } proposal ? [new Proposal(at, proposal)] : []);

    public static Diagnostic NoSuchEdition(SourceSpan at, string name, IReadOnlyList<int> editions) => Problem.Error(
        "B0010", at, $"there is no such edition of {Quoted.Of(name)}",
        editions.Count == 1 ? $"there is edition {editions[0]}" : $"there are the editions {Phrases.And([.. editions.Select(edition => $"{edition}")])}",
        "a newer one comes with a newer version of the program")
        .OrAny(editions.Select(edition => new Proposal(at, $"{edition}")));

    public static Diagnostic NoEdition(SourceSpan at, string name, int newest) => Problem.Warning(
        "B0011", at, $"this does not say which edition of {Quoted.Of(name)}", $"edition {newest}, the newest, is read, and another one once there is a newer",
        $"write `use base {name} edition {newest}`: an edition never changes, so what it answers stays the same")
        .Or(new Proposal(at, $" edition {newest}"));
}
