namespace Byrelaw.Language.Diagnostics;

/// <summary>Joins and starts phrases.</summary>
public static class Phrases
{
    /// <summary><c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string And(IReadOnlyList<string> items) => Join(items, "and");

    /// <summary><c>a</c>, <c>a or b</c>, <c>a, b or c</c>.</summary>
    public static string Or(IReadOnlyList<string> items) => Join(items, "or");

    /// <summary>The first few, and how many more there are.</summary>
    public static string FirstOf(IReadOnlyList<string> items, int atMost) =>
        items.Count <= atMost ? string.Join(", ", items) : $"{string.Join(", ", items.Take(atMost))} and {items.Count - atMost} more";

    /// <summary>With a capital at the start.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>With a small letter at the start, unless the first word is all capitals (<c>BVD virus</c>).</summary>
    public static string Small(string text) =>
        text.Length > 1 && char.IsUpper(text[1]) ? text : text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];

    /// <summary>With a full stop at the end, unless it ends a sentence already.</summary>
    public static string Stop(string text) => text.Length == 0 || ".?!”".Contains(text[^1]) ? text : text + ".";

    private static string Join(IReadOnlyList<string> items, string word) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} {word} {items[^1]}",
    };
}
