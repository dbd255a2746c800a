using Byrelaw.Language.Blocks;
using Byrelaw.Language.Phrases;
using Byrelaw.Language.Syntax.Lines;
using Byrelaw.Language.Tidying.Layouts;
using Byrelaw.Language.Tidying.Written;

namespace Byrelaw.Language.Tidying.Printing;

/// <summary>Finds the printer of a statement. A new kind of line needs no printer, but reads better with one.</summary>
/// <param name="phrases">The declared names of all files.</param>
internal sealed class StatementPrinter(PhraseBook phrases)
{
    /// <summary>How a statement of a block is set.</summary>
    public Layout Of(Statement statement, BlockKind block) =>
        (statement.Syntax is not { } line ? null
            : HeadPrinter.Of(line) ?? DeclarationPrinter.Of(line) ?? RuleLinePrinter.Of(line) ?? FarmLinePrinter.Of(line))
        ?? new TokenPrinter(phrases.Fuse(statement.Line, from: 1).Tokens, block, hasNames: statement.Syntax is not AcceptLine).Print();
}
