using Pidgin;

namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>What a line may start with.</summary>
internal static class LineStarts
{
    /// <summary>Words with which a line of a block, and then a new block, may start.</summary>
    /// <param name="head">The block's first line; null above the first block.</param>
    public static (IEnumerable<string> InBlock, IEnumerable<string> Heads) Words(LogicalLine? head) =>
        (head is null ? [] : LineTable.Bodies(Kind(head)).Keys, LineTable.Heads.Keys);

    /// <summary>What may stand at the start of a line that has no word of its own: a condition alone, or what is on record of an
    /// example's animal. Nothing where neither may.</summary>
    public static IReadOnlyList<Wanted> OfTheirOwn(LogicalLine? head)
    {
        var grammar = head is null ? null
            : LineTable.TakesCondition(Kind(head)) ? RuleLines.Condition
            : Kind(head) == BlockKind.Example ? ExampleLines.Recorded
            : null;
        return grammar is null ? [] : After([], grammar, Kind(head!)).Following;
    }

    /// <summary>What the grammar of a block's own lines makes of a first word that may start a block too, such as <c>records</c> in an
    /// example; null for every other word.</summary>
    public static NotedLine? InBlock(LogicalLine? head, Token word) =>
        head is not null && LineTable.Heads.ContainsKey(word.Folded) && LineTable.Bodies(Kind(head)).TryGetValue(word.Folded, out var grammar)
            ? After([word], grammar, Kind(head))
            : null;

    private static NotedLine After(Token[] words, Parser<Token, LineSyntax> grammar, BlockKind kind)
    {
        var notes = new GrammarNotes();
        notes.Begin(new LogicalLine(words), kind);
        grammar.Parse(words, notes);
        return notes.Lines[0];
    }

    private static BlockKind Kind(LogicalLine head) => LineTable.Heads[head.WordAt(0)].Kind;
}
