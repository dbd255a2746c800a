namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>
/// Finds a hinted word in what people write: in <c>A.I.</c>, <c>AI 1</c>, <c>(AI)</c>, <c>AIs</c> and <c>insemination</c> as in
/// <c>AI</c> and <c>insem</c>. It errs on the side of finding one: what is found costs a question.
/// </summary>
/// <param name="Words">The words of a text, a space before, between and after them.</param>
/// <param name="Joined">The same without spaces.</param>
public readonly record struct HintedWord(string Words, string Joined)
{
    /// <summary>A hint of so many letters is also found at the beginning of a longer word.</summary>
    private const int LettersOfABeginning = 5;

    /// <summary>A text, ready to be held to many others.</summary>
    public static HintedWord Of(string text) => new($" {Letters(text, ' ')} ", Letters(text, null));

    /// <summary>Whether the hinted words stand in a name, one after the other.</summary>
    public static bool StandsIn(string name, string hint) => Of(hint).StandsIn(Of(name));

    /// <summary>The same of texts that are ready.</summary>
    public bool StandsIn(HintedWord name) => Joined == name.Joined || (Joined.Length > 0 && Stands(name.Words, Words.AsSpan(0, Words.Length - 1)));

    /// <summary>Whether it stands there whole, as several, or, where it is long enough, as the beginning of a word.</summary>
    private static bool Stands(string said, ReadOnlySpan<char> looked)
    {
        for (var at = said.AsSpan().IndexOf(looked, StringComparison.Ordinal); at >= 0;)
        {
            var after = said.AsSpan(at + looked.Length);
            if (looked.Length > LettersOfABeginning || after[0] == ' ' || after.StartsWith("s ", StringComparison.Ordinal))
            {
                return true;
            }

            var next = said.AsSpan(at + 1).IndexOf(looked, StringComparison.Ordinal);
            at = next < 0 ? -1 : at + 1 + next;
        }

        return false;
    }

    /// <summary>The letters of a text without their accents; whatever else stands there parts words, or is left out.</summary>
    private static string Letters(string text, char? between)
    {
        var letters = new StringBuilder(text.Length);
        foreach (var sign in NameFolding.Fold(text))
        {
            if (char.IsLetter(sign))
            {
                letters.Append(WithoutAccent(sign));
            }
            else if (between is { } space && letters.Length > 0 && letters[^1] != space)
            {
                letters.Append(space);
            }
        }

        return letters.ToString().Trim();
    }

    /// <summary>Accents of western Europe, where hinted words come from; .NET takes none off without the language data of the system.</summary>
    internal static char WithoutAccent(char letter) => letter switch
    {
        >= '\u00E0' and <= '\u00E5' => 'a',
        '\u00E7' => 'c',
        >= '\u00E8' and <= '\u00EB' => 'e',
        >= '\u00EC' and <= '\u00EF' => 'i',
        '\u00F1' => 'n',
        >= '\u00F2' and <= '\u00F6' => 'o',
        >= '\u00F9' and <= '\u00FC' => 'u',
        _ => letter,
    };
}
