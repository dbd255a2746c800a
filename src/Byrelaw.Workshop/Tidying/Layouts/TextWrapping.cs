namespace Byrelaw.Workshop.Tidying.Layouts;

/// <summary>Parts a long text into texts that join to it again.</summary>
internal static class TextWrapping
{
    /// <summary>
    /// The texts in quotes, each at most <paramref name="room"/> columns wide where its words allow. A text that
    /// starts or ends with a space stays whole: joining would take that space away.
    /// </summary>
    public static List<string> Wrap(string text, int room)
    {
        if (text.StartsWith(' ') || text.EndsWith(' '))
        {
            return [NameText.Text(text)];
        }

        var lines = new List<string>();
        var line = "";
        foreach (var word in Words(text))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && DisplayWidth.Of(NameText.Text(longer)) > room)
            {
                lines.Add(NameText.Text(line));
                longer = word;
            }

            line = longer;
        }

        lines.Add(NameText.Text(line));
        return lines;
    }

    /// <summary>Parted where exactly one space stands, for joining puts exactly one there.</summary>
    private static IEnumerable<string> Words(string text)
    {
        var start = 0;
        for (var i = 1; i < text.Length - 1; i++)
        {
            if (text[i] == ' ' && text[i - 1] != ' ' && text[i + 1] != ' ')
            {
                yield return text[start..i];
                start = i + 1;
            }
        }

        yield return text[start..];
    }
}
