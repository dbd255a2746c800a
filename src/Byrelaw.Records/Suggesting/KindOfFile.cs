using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Suggesting;

/// <summary>What every row of a file may be, by what the file or its sheet is called: <c>calvings.csv</c>, <c>Movements</c>.</summary>
internal static class KindOfFile
{
    private static readonly FrozenSet<string> Moves = new[] { "move", "moves", "moved", "movement", "movements", "pen change", "group change", "changed pen", "changed group" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The kind; null where its name says none, or may say several.</summary>
    /// <param name="name">Of the file, or of the sheet of a workbook.</param>
    /// <param name="vocabulary">The words.</param>
    public static Kind? Of(string name, Vocabulary vocabulary)
    {
        var words = string.Join(' ', NameFolding.Fold(name.Split('/')[^1].Split('.')[0]).Split([' ', '_', '-'], StringSplitOptions.RemoveEmptyEntries));
        if (words.Length == 0)
        {
            return null;
        }

        return IsMove(words) ? vocabulary.MobMove
            : vocabulary.FindKind(words) ?? (words.EndsWith('s') ? vocabulary.FindKind(words[..^1]) : null)
            ?? (vocabulary.Hints.Where(hint => HintedWord.StandsIn(words, hint.Word)).Select(hint => hint.Kind).Distinct().ToList() is [var only] ? only : null);
    }

    /// <summary>Whether a text says that an animal went to another mob: common practice, no source.</summary>
    public static bool IsMove(string text) => Moves.Contains(NameFolding.Fold(text));

    /// <summary>Whether a heading is that of a mob: <c>To pen</c>, <c>Group</c>.</summary>
    public static bool IsHeadedMob(ColumnProfile column) =>
        NameFolding.Fold(column.Name).Split([' ', '_', '-', '.', '/'], StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 and <= 3 } words && Array.TrueForAll(words, word => word is "to" or "from" or "pen" or "mob" or "group" or "paddock" or "old" or "new")
        && Array.Exists(words, word => word is not ("old" or "new"));
}
