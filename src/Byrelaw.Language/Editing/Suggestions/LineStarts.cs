using Byrelaw.Language.Blocks;
using Byrelaw.Language.Grammar;
using Byrelaw.Language.Lexing;
using Pidgin;

namespace Byrelaw.Language.Editing.Suggestions;

/// <summary>What a line may start with.</summary>
internal static class LineStarts
{
    /// <summary>Words with which a line of a block, and then a new block, may start.</summary>
    /// <param name="head">The block's first line; null above the first block.</param>
    public static (IEnumerable<string> InBlock, IEnumerable<string> Heads) Words(LogicalLine? head) =>
        (head is null ? [] : LineTable.Bodies(Kind(head)).Keys, LineTable.Heads.Keys);

    /// <summary>What may stand at the start of a line that is a condition alone; nothing where no condition may.</summary>
    public static IReadOnlyList<Wanted> Condition(LogicalLine? head)
    {
        if (head is null || !LineTable.TakesCondition(Kind(head)))
        {
            return [];
        }

        var notes = new GrammarNotes();
        notes.Begin(new LogicalLine([]), Kind(head));
        RuleLines.Condition.Parse(Array.Empty<Token>(), notes);
        return notes.Lines[0].Following;
    }

    private static BlockKind Kind(LogicalLine head) => LineTable.Heads[head.WordAt(0)].Kind;
}
