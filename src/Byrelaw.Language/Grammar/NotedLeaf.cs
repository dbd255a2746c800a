using Pidgin;

namespace Byrelaw.Language.Grammar;

/// <summary>
/// One leaf of the grammar. Whoever reads a line with <see cref="GrammarNotes"/> is told what was tried and taken
/// where: an editor learns from the grammar itself what a word is and what may stand at a place.
/// </summary>
/// <param name="holds">Whether the leaf takes a token.</param>
/// <param name="wanted">What it is.</param>
internal sealed class NotedLeaf(Func<Token, bool> holds, Wanted wanted) : Parser<Token, Token>
{
    private readonly Parser<Token, Token> _token = Parser<Token>.Token(holds);

    public override bool TryParse(ref ParseState<Token> state, ref PooledList<Expected<Token>> expecteds, out Token result)
    {
        var notes = state.Configuration as GrammarNotes;
        var place = (int)state.Location;
        var isTaken = _token.TryParse(ref state, ref expecteds, out result!);
        notes?.Note(place, wanted, isTaken);
        return isTaken;
    }
}
