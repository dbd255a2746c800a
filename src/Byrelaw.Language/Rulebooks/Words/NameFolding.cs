namespace Byrelaw.Language.Rulebooks.Words;

/// <summary>Makes two spellings of one name equal.</summary>
public static class NameFolding
{
    /// <summary>
    /// The form in which names are compared: NFC, lower case by the invariant rules, one
    /// apostrophe, one space, one hyphen, one micro sign; no space at the ends.
    /// </summary>
    public static string Fold(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var folded = new StringBuilder(name.Length);
        foreach (var c in ComposedText.Of(name))
        {
            switch (c)
            {
                case '\u2019' or '\u2018' or '\u02BC':
                    folded.Append('\'');
                    break;
                case '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2212':
                    folded.Append('-');
                    break;
                case '\u00B5' or '\u03BC':
                    folded.Append('u');
                    break;
                case var space when char.IsWhiteSpace(space):
                    if (folded.Length > 0 && folded[^1] != ' ')
                    {
                        folded.Append(' ');
                    }

                    break;
                default:
                    folded.Append(char.ToLowerInvariant(c));
                    break;
            }
        }

        return folded.ToString().TrimEnd();
    }
}
