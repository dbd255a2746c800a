namespace Byrelaw.Language.Floors;

/// <summary>
/// Words for a calving, or a slipped calf, that is still to come: <c>calving due</c>, <c>next calving</c>, <c>to calve</c>. A row of such a word ends no pregnancy; it says that there is one.
/// </summary>
public static class DaysToCome
{
    private static readonly ImmutableArray<string> All =
        ["due", "expected", "expect", "expecting", "exp", "next", "watch", "risk", "near", "close", "soon", "estimated", "est", "predicted", "forecast", "planned", "plan", "to", "springing", "springer", "EDC", "ECD"];

    private static readonly ImmutableArray<string> Folded = [.. All.Select(NameFolding.Fold)];

    /// <summary>Whether a name, or a heading, says of a kind that ends a pregnancy that it has not happened yet.</summary>
    public static bool AreMeant(string name, Kind kind) => AreMeant(name, kind?.Name ?? "");

    /// <summary>The same of a kind by its name.</summary>
    public static bool AreMeant(string name, string kind) =>
        NameFolding.Fold(kind) is "calving" or "abortion" && HintedWord.Of(name).Words.Split(' ').Any(word => Folded.Contains(word));
}
