namespace Byrelaw.Workshop.Editing.Tokens;

/// <summary>Says of every token of a file what it is.</summary>
internal static class TokenClasses
{
    /// <summary>All tokens and comments, in order.</summary>
    public static List<ClassifiedToken> Of(FileNotes notes)
    {
        var lexed = Lexer.Lex(notes.File.Source);
        var classes = new List<ClassifiedToken>(lexed.Tokens.Count);
        var comment = 0;
        var known = Known(notes);
        var at = 0;
        var startsLine = true;
        foreach (var token in lexed.Tokens)
        {
            for (; comment < lexed.Comments.Count && lexed.Comments[comment].Start < token.Span.Start; comment++)
            {
                classes.Add(new ClassifiedToken(lexed.Comments[comment], TokenClass.Comment));
            }

            if (token.Kind is TokenKind.EndOfLine or TokenKind.EndOfFile)
            {
                startsLine = true;
                continue;
            }

            while (at < known.Count && known[at].Span.End <= token.Span.Start)
            {
                at++;
            }

            var isKnown = at < known.Count && known[at].Span.Start <= token.Span.Start;
            classes.Add(new ClassifiedToken(token.Span, isKnown ? known[at].Class : Plain(token, startsLine)));
            startsLine = false;
        }

        return classes;
    }

    /// <summary>What the grammar knows, in order: its own words and signs, and names with what they mean.</summary>
    private static List<(SourceSpan Span, TokenClass Class)> Known(FileNotes notes)
    {
        var known = new List<(SourceSpan Span, TokenClass Class)>();
        foreach (var line in notes.Lines)
        {
            var use = 0;
            for (var i = 0; i < line.Noted.Taken.Length; i++)
            {
                var token = line.Noted.Line.Tokens[i];
                while (use < line.Names.Count && line.Names[use].Span.End <= token.Span.Start)
                {
                    use++;
                }

                if (use < line.Names.Count && line.Names[use].Span.Start <= token.Span.End && line.Names[use].Span.End >= token.Span.Start)
                {
                    known.Add((token.Span, Of(line.Names[use].Thing)));
                }
                else if (line.Noted.Taken[i] is { } taken)
                {
                    known.Add((token.Span, Of(taken.Kind)));
                }
            }
        }

        return known;
    }

    private static TokenClass Of(NamedThing thing) => thing.Sort switch
    {
        NameSort.Event => TokenClass.Event,
        NameSort.Measure => TokenClass.Measure,
        NameSort.Test => TokenClass.Test,
        NameSort.Answer or NameSort.Value => TokenClass.Answer,
        NameSort.Fact => TokenClass.Fact,
        NameSort.Spell => TokenClass.Spell,
        NameSort.Define => TokenClass.Define,
        NameSort.Date => TokenClass.DateName,
        NameSort.List => TokenClass.List,
        NameSort.Rule => TokenClass.RuleName,
        _ => thing.Key is "age" or "parity" ? TokenClass.Fact : thing.Key == "birth" ? TokenClass.DateName : TokenClass.Keyword,
    };

    private static TokenClass Of(LeafKind kind) => kind switch
    {
        LeafKind.Word => TokenClass.Keyword,
        LeafKind.Text => TokenClass.Text,
        LeafKind.Number => TokenClass.Number,
        LeafKind.Date => TokenClass.Date,
        LeafKind.Unit or LeafKind.TimeUnit => TokenClass.Unit,
        LeafKind.Comma or LeafKind.Bullet => TokenClass.Sign,
        _ => TokenClass.Name,
    };

    /// <summary>What a token is that the grammar did not take.</summary>
    private static TokenClass Plain(Token token, bool startsLine) => token.Kind switch
    {
        TokenKind.Text => TokenClass.Text,
        TokenKind.Number or TokenKind.Percent => TokenClass.Number,
        TokenKind.Date => TokenClass.Date,
        TokenKind.Unit => TokenClass.Unit,
        TokenKind.Comma or TokenKind.Bullet => TokenClass.Sign,
        TokenKind.Bad => TokenClass.Wrong,
        _ => startsLine || LanguageWords.EndName(token.Folded) ? TokenClass.Keyword : TokenClass.Name,
    };
}
