namespace Byrelaw.Language.Diagnostics;

/// <summary>Puts the reader's own words into messages.</summary>
public static class Quoted
{
    private const int Longest = 60;

    /// <summary>Words in back-ticks, shortened where they would fill the screen.</summary>
    public static string Of(string words) => words.Length > Longest ? $"`{words[..(char.IsHighSurrogate(words[Longest - 1]) ? Longest - 1 : Longest)]}…`" : $"`{words}`";

    /// <summary>What stands at a place, in back-ticks.</summary>
    public static string Of(SourceSpan at) => Of(at.Text);

    /// <summary>A place in brackets' stead: <c>vocabulary.byre, line 31</c>.</summary>
    public static string Place(SourceSpan at) => $"{at.File.Path}, line {at.Line}";

    /// <summary>Words in back-ticks, joined as one says them: <c>`a`, `b` or `c`</c>.</summary>
    public static string Either(IReadOnlyList<string> words) => Phrases.Or([.. words.Select(Of)]);
}
