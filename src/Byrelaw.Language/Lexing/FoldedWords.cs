namespace Byrelaw.Language.Lexing;

/// <summary>Folds single words; plain lower-case ones, which are most, cost nothing.</summary>
internal static class FoldedWords
{
    /// <summary>The form in which a word is compared.</summary>
    public static string Of(string word)
    {
        foreach (var c in word)
        {
            if (!char.IsAsciiLetterLower(c))
            {
                return NameFolding.Fold(word);
            }
        }

        return word;
    }
}
