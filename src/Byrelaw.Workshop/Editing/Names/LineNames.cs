namespace Byrelaw.Workshop.Editing.Names;

/// <summary>Finds the names of one line, by what the grammar took its tokens for.</summary>
internal sealed class LineNames
{
    private readonly NotedLine _line;
    private readonly Namespace _names;
    private readonly List<NameUse> _uses = [];
    private readonly string _head;
    private Symbol? _declared;

    private LineNames(NotedLine line, Namespace names)
    {
        _line = line;
        _names = names;
        _head = line.Line.WordAt(0);
    }

    /// <summary>The names in their order; names that mean nothing are not among them.</summary>
    public static IReadOnlyList<NameUse> In(NotedLine line, Namespace names)
    {
        var reader = new LineNames(line, names);
        for (var at = 0; at < line.Taken.Length;)
        {
            at = reader.Read(at);
        }

        return reader._uses;
    }

    /// <summary>Reads what starts at a place; returns the place after it.</summary>
    private int Read(int at)
    {
        var token = _line.Line.Tokens[at];
        switch (_line.Taken[at])
        {
            case { Kind: LeafKind.Name } wanted:
                var end = EndOfName(at);
                Used(wanted, at, end);
                return end;
            case { Kind: LeafKind.DeclaredName } wanted:
                Declared(wanted, token);
                break;
            case { Kind: LeafKind.Text } wanted when NameLabels.IsRule(wanted, _head):
                Add(NamedThing.Of(NameSort.Rule, token.Text), token, NameLabels.DeclaresRule(_head));
                break;
            case { Kind: LeafKind.Word } when at == 0 && _line.Block == BlockKind.Programme && _names.Find(_head) is DateSymbol date:
                Add(SymbolThings.Of(date), token, declares: true);
                break;
            case null when token.IsNamePart && token.Kind != TokenKind.Text && at > 0:
                return Guessed(at);
            default:
                break;
        }

        return at + 1;
    }

    private int EndOfName(int at)
    {
        var end = at + 1;
        while (end < _line.Taken.Length && _line.Taken[end]?.Kind == LeafKind.MoreOfName)
        {
            end++;
        }

        return end;
    }

    private void Used(Wanted wanted, int start, int end)
    {
        if (wanted.Label is NameLabels.Detail or NameLabels.DetailValue)
        {
            // A detail is its kind's own: no name of the rulebook is meant.
            return;
        }

        if (NameLabels.IsList(wanted))
        {
            var thing = _names.Find(Text(start, end)) is BuiltInSymbol group ? SymbolThings.Of(group) : NamedThing.Of(NameSort.List, Text(start, end));
            Add(thing, start, end, declares: _head == "rules");
        }
        else if (wanted.Label == NameLabels.Value)
        {
            Value(start, end);
        }
        else if (_names.Find(Text(start, end)) is { } symbol)
        {
            _declared ??= symbol;
            Add(SymbolThings.Of(symbol), start, end, declares: false);
        }
        else if (wanted.Label == NameLabels.Counted)
        {
            AnswerAndTest(start, end);
        }
    }

    /// <summary>A value belongs to the first name of the line that has such a value: a condition has one subject.</summary>
    private void Value(int start, int end)
    {
        foreach (var use in _uses)
        {
            if (_names.Find(use.Spelling) is { } symbol && SymbolThings.Word(symbol, Text(start, end)) is { } word)
            {
                Add(word, start, end, declares: false);
                return;
            }
        }
    }

    private void AnswerAndTest(int start, int end)
    {
        for (var test = start + 1; test < end; test++)
        {
            if (_names.Find(Text(test, end)) is KindSymbol { Kind: TestKind } symbol && SymbolThings.Word(symbol, Text(start, test)) is { } answer)
            {
                Add(answer, start, test, declares: false);
                Add(SymbolThings.Of(symbol), test, end, declares: false);
                return;
            }
        }
    }

    private void Declared(Wanted wanted, Token token)
    {
        if (_declared is not null && wanted.Label is NameLabels.Value or "an answer")
        {
            if (SymbolThings.Word(_declared, token.Text) is { } word)
            {
                Add(word, token, declares: true);
            }
        }
        else if (_names.Find(token.Text) is { } symbol)
        {
            _declared ??= symbol;
            Add(SymbolThings.Of(symbol), token, declares: true);
        }
    }

    /// <summary>In a line that could not be read to its end a name is the longest run of words that is one.</summary>
    private int Guessed(int at)
    {
        var end = at;
        while (end < _line.Taken.Length && _line.Taken[end] is null && _line.Line.Tokens[end].IsNamePart)
        {
            end++;
        }

        for (; end > at; end--)
        {
            if (_names.Find(Text(at, end)) is { } symbol)
            {
                Add(SymbolThings.Of(symbol), at, end, declares: false);
                return end;
            }
        }

        return at + 1;
    }

    private string Text(int start, int end) =>
        end == start + 1 ? _line.Line.Tokens[start].Text : string.Join(' ', _line.Line.Tokens[start..end].Select(token => token.Text));

    private void Add(NamedThing thing, Token token, bool declares)
    {
        var quotes = token.Kind == TokenKind.Text ? 1 : 0;
        var span = new SourceSpan(token.Span.File, token.Span.Start + quotes, token.Span.Length - (2 * quotes));
        _uses.Add(new NameUse(thing, span, NameFolding.Fold(token.Text), declares, quotes > 0));
    }

    private void Add(NamedThing thing, int start, int end, bool declares)
    {
        var tokens = _line.Line.Tokens;
        if (end == start + 1)
        {
            Add(thing, tokens[start], declares);
        }
        else
        {
            _uses.Add(new NameUse(thing, tokens[start].Span.To(tokens[end - 1].Span), NameFolding.Fold(Text(start, end)), declares, InQuotes: false));
        }
    }
}
