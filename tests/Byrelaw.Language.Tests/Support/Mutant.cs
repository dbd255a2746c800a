namespace Byrelaw.Language.Tests.Support;

/// <summary>Makes one small slip in a text, as a typing hand or a careless copy does.</summary>
internal static class Mutant
{
    private static readonly string[] Scraps =
    [
        "\"", "-", "#", "any of\n", "  - ", "rule \"X\"\n", "needs ", "2026-13-40", "not ", "last ", "in the last ", "9999999999999999999",
        "\u00a0", "\u0430", "\u201c", "{", "`", "%", "\r", "\t", "define ", "use \"\"\n", "drop \"\"\n", "since last ", "( ", ">= ", "e\u0301",
    ];

    /// <summary>The text with one slip.</summary>
    public static string Of(string text, Random random)
    {
        var at = random.Next(text.Length + 1);
        return random.Next(9) switch
        {
            0 => at < text.Length ? text.Remove(at, 1) : text,
            1 => text.Remove(at, Math.Min(random.Next(40), text.Length - at)),
            2 => text.Insert(at, Scraps[random.Next(Scraps.Length)]),
            3 => text.Insert(at, ((char)random.Next(1, 0x3000)).ToString()),
            4 => OnLines(text, lines => lines.RemoveAt(random.Next(lines.Count))),
            5 => OnLines(text, lines => lines.Insert(random.Next(lines.Count), lines[random.Next(lines.Count)])),
            6 => OnLines(text, lines => Swap(lines, random.Next(lines.Count), random.Next(lines.Count))),
            7 => OnWords(text, random, words => words.RemoveAt(random.Next(words.Count))),
            _ => OnWords(text, random, words => Swap(words, random.Next(words.Count), random.Next(words.Count))),
        };
    }

    private static string OnLines(string text, Action<List<string>> change)
    {
        var lines = text.Split('\n').ToList();
        change(lines);
        return string.Join('\n', lines);
    }

    private static string OnWords(string text, Random random, Action<List<string>> change)
    {
        var lines = text.Split('\n');
        var line = random.Next(lines.Length);
        var words = lines[line].Split(' ').ToList();
        change(words);
        lines[line] = string.Join(' ', words);
        return string.Join('\n', lines);
    }

    private static void Swap(List<string> items, int a, int b) => (items[a], items[b]) = (items[b], items[a]);
}
