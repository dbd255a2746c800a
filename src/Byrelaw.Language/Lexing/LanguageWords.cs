using static Byrelaw.Language.Lexing.WordRole;

namespace Byrelaw.Language.Lexing;

/// <summary>
/// The language's own words inside lines, and what each does: the one table that names, conditions, completion, correction and
/// colouring read. First words of lines stand in <see cref="Blocks.LineTable"/>, beside the grammar that reads such a line.
/// </summary>
internal static class LanguageWords
{
    // Where several could be the missing one, the earlier is tried first. "ever" is never taken to be missing: where a window is
    // missing, any window but this one may have been meant.
    private static readonly ImmutableArray<(string Word, WordRole Roles)> All =
    [
        ("in", EndsName | StartsWindow | InLines | InDeclarations),
        ("the", InLines | InDeclarations),
        ("last", EndsName | InLines),
        ("since", EndsName | StartsWindow | InLines),
        ("of", EndsName | InLines | InDeclarations),
        ("or", EndsName | InLines),
        ("and", EndsName | InLines),
        ("at", EndsName | StartsCondition | StartsDemand | StartsWindow | InLines),
        ("least", EndsName | InLines),
        ("most", EndsName | InLines),
        ("more", EndsName | StartsCondition | StartsDemand | InLines),
        ("less", EndsName | StartsCondition | StartsDemand | InLines),
        ("than", EndsName | InLines),
        ("exactly", EndsName | StartsCondition | StartsDemand | InLines),
        ("between", EndsName | StartsCondition | StartsDemand | StartsWindow | InLines),
        ("is", EndsName | InLines | InDeclarations),
        ("days", InLines),
        ("from", EndsName | StartsWindow | InLines | InDeclarations),
        ("after", EndsName | InLines),
        ("before", EndsName | StartsWindow | InLines | InDeclarations),
        ("ago", EndsName | InLines),
        ("apart", EndsName | InLines),
        ("to", InLines | InDeclarations),
        ("for", EndsName | InLines),
        ("by", EndsName | InLines),
        ("on", EndsName | InLines | InDeclarations),
        ("as", EndsName | InLines),
        ("no", EndsName | StartsCondition | InLines),
        ("one", InLines | InDeclarations),
        ("any", StartsCondition | InLines),
        ("all", StartsCondition | InLines),
        ("her", InLines),
        ("mob", InLines),
        ("herd", InLines),
        ("top", InLines),
        ("with", EndsName | InLines | InDeclarations),
        ("latest", EndsName | StartsCondition | Chooses | InLines),
        ("lowest", EndsName | StartsCondition | Chooses | InLines),
        ("highest", EndsName | StartsCondition | Chooses | InLines),
        ("average", EndsName | StartsCondition | Chooses | InLines),
        ("change", EndsName | StartsCondition | Chooses | InLines),
        ("every", StartsCondition | Chooses | InLines),
        ("results", EndsName | InLines),
        ("lost", EndsName | StartsCondition | InLines),
        ("gained", EndsName | StartsCondition | InLines),
        ("recorded", EndsName | InLines),
        ("until", EndsName | InLines | InDeclarations),
        ("also", EndsName | InLines | InDeclarations),
        ("answers", EndsName | InLines | InDeclarations),
        ("not", EndsName | StartsCondition | InLines | InDeclarations),
        ("animals", InLines),
        ("over", InLines),
        ("known", InLines),
        ("rule", InLines),
        ("none", EndsName | StartsCondition),
        ("ever", EndsName | StartsWindow),
        ("scale", InDeclarations),
        ("molar", InDeclarations),
        ("mass", InDeclarations),
        ("blank", InDeclarations),
        ("plausible", InDeclarations),
    ];

    private static readonly FrozenDictionary<string, WordRole> ByWord = All.ToFrozenDictionary(word => word.Word, word => word.Roles);

    // Names end at every token of every file: this one is asked most.
    private static readonly FrozenSet<string> EndingNames = With(EndsName).ToFrozenSet();

    /// <summary>Whether a name ends before a folded word.</summary>
    public static bool EndName(string folded) => EndingNames.Contains(folded);

    /// <summary>Whether a folded word does this, or one of these, in a line.</summary>
    public static bool Has(string folded, WordRole role) => ByWord.TryGetValue(folded, out var roles) && (roles & role) != None;

    /// <summary>The words that do this, in the order in which they are tried.</summary>
    public static ImmutableArray<string> With(WordRole role) => [.. All.Where(word => (word.Roles & role) != None).Select(word => word.Word)];
}
