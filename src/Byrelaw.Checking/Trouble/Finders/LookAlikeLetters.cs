namespace Byrelaw.Checking.Trouble.Finders;

/// <summary>What a name looks like: letters that many typefaces draw alike are made one.</summary>
/// <remarks>
/// From memory: Cyrillic, Greek and Armenian letters that look like Latin ones; 0 and O; 1, l and the capital I. Unicode keeps a longer
/// list (UTS 39, confusables); these are the letters that a keyboard or a copied text puts into a rule file.
/// </remarks>
internal static class LookAlikeLetters
{
    private const string Drawn =
        "аa еe оo рp сc уy хx іi јj ѕs һh ԁd ԛq ԝw ӏl кk АA ВB ЕE КK МM НH ОO РP СC ТT УY ХX ІI ЈJ ЅS " +
        "αa οo νv ρp υu ιi κk τt χx ΑA ΒB ΕE ΖZ ΗH ΙI ΚK ΜM ΝN ΟO ΡP ΤT ΥY ΧX օo սu հh ոn ցg 0o 1l Il";

    private static readonly Dictionary<char, char> Latin = Drawn.Split(' ').ToDictionary(pair => pair[0], pair => pair[1]);

    /// <summary>Equal for two names that look alike.</summary>
    public static string Looks(string name)
    {
        var looks = new StringBuilder(name.Length);
        foreach (var c in ComposedText.Of(name))
        {
            var like = Latin.GetValueOrDefault(c, c);
            looks.Append(char.ToLowerInvariant(like == 'I' ? 'l' : like));
        }

        return looks.ToString();
    }
}
