namespace Byrelaw.Workshop.Tests.Typing;

/// <summary>A good file with one slip of the hand: two neighbouring words swapped, one dropped or one typed twice.</summary>
/// <param name="Path">The file.</param>
/// <param name="What">The slip, for people to read.</param>
/// <param name="Text">The whole text with the slip in it.</param>
/// <param name="First">The first word that is not as it was, counted over the whole text with the slip.</param>
/// <param name="Last">The last one.</param>
internal sealed record TypingMistake(string Path, string What, string Text, int First, int Last)
{
    /// <summary>Makes a slip. A text in quotes is one word, a comma belongs to the word before it; nothing is changed inside texts and comments.</summary>
    /// <param name="good">The good files by path. Each word of all of them is as likely as any other.</param>
    /// <param name="random">Draws.</param>
    public static TypingMistake In(IReadOnlyList<(string Path, string Text)> good, Random random)
    {
        var files = good.Select(file => (file.Path, file.Text, Words: Words(file.Text))).ToList();
        while (true)
        {
            var at = random.Next(files.Sum(file => file.Words.Count));
            var (path, text, words) = files.First(file => (at -= file.Words.Count) < 0);
            at += words.Count;
            var word = words[at];
            var next = at + 1 < words.Count && words[at + 1].Line == word.Line ? words[at + 1] : default;
            switch (random.Next(3))
            {
                case 0 when next.File is not null && next.Text != word.Text:
                    return new TypingMistake(path, $"line {word.Line}: `{Short(word)} {Short(next)}` swapped", Replaced(text, word.To(next), $"{next.Text} {word.Text}"), at, at + 1);
                case 1:
                    return new TypingMistake(path, $"line {word.Line}: `{Short(word)}` dropped", Replaced(text, word with { Length = word.Length + (text[word.End] == ' ' ? 1 : 0) }, ""), at, at);
                case 2:
                    return new TypingMistake(path, $"line {word.Line}: `{Short(word)}` doubled", Replaced(text, word, $"{word.Text} {word.Text}"), at, at + 1);
                default:
                    break;
            }
        }
    }

    /// <summary>How many words lie between the slip and a marked stretch; 0 where they touch or overlap.</summary>
    public int WordsTo(int offset, int length)
    {
        var words = Words(Text);
        var start = words.FindIndex(word => word.End > offset);
        var end = words.FindLastIndex(word => word.Start < offset + length);
        start = start < 0 ? words.Count : start;
        end = Math.Max(start, end);
        return Math.Max(0, Math.Max(start - Last, First - end));
    }

    private static List<SourceSpan> Words(string text)
    {
        var words = new List<SourceSpan>();
        foreach (var token in LineSplitter.Split(Lexer.Lex(new SourceFile("x", text))).SelectMany(line => line.Tokens))
        {
            if (words.Count > 0 && words[^1].End == token.Span.Start)
            {
                words[^1] = words[^1].To(token.Span);
            }
            else
            {
                words.Add(token.Span);
            }
        }

        return words;
    }

    private static string Short(SourceSpan word) => word.Length > 40 ? word.Text.Split('\n')[0][..Math.Min(30, word.Text.Split('\n')[0].Length)] + "...\"" : word.Text;

    private static string Replaced(string text, SourceSpan at, string with) => text[..at.Start] + with + text[at.End..];
}
