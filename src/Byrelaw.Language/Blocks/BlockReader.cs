using Pidgin;

namespace Byrelaw.Language.Blocks;

/// <summary>
/// Reads one file's lines into blocks. A line that cannot be read breaks the block it stands in;
/// if nothing says what it was meant to be, it also starts an <see cref="BlockKind.Unreadable"/> block, because it may
/// have been the head of a rule whose lines follow.
/// </summary>
internal sealed class BlockReader
{
    private static readonly Parser<Token, LineSyntax> Condition = RuleLines.Condition.Before(Parser<Token>.End);
    private static readonly Parser<Token, LineSyntax> Recorded = ExampleLines.Recorded.Before(Parser<Token>.End);
    private static readonly Parser<Token, LineSyntax> OfHerMob = ExampleLines.OfHerMob.Before(Parser<Token>.End);
    private static readonly Parser<Token, LineSyntax> BlankOf = FarmLines.BlankOf.Before(Parser<Token>.End);
    private static readonly Parser<Token, LineSyntax> Column = SourceLines.Column.Before(Parser<Token>.End);
    private static readonly Parser<Token, LineSyntax> Cell = SourceLines.Cell.Before(Parser<Token>.End);
    private static readonly Parser<Token, LineSyntax> Bullet = RuleLines.Bullet.Before(Parser<Token>.End);

    private readonly PhraseBook _phrases;
    private readonly List<Diagnostic> _problems;
    private readonly GrammarNotes? _notes;
    private readonly List<Block> _blocks = [];
    private Block? _current;
    private bool _bulletsMayFollow;

    private BlockReader(PhraseBook phrases, List<Diagnostic> problems, GrammarNotes? notes)
    {
        _notes = notes;
        _phrases = phrases;
        _problems = problems;
    }

    /// <summary>Reads all lines; adds what is wrong to <paramref name="problems"/>, and how each was read to <paramref name="notes"/>.</summary>
    public static List<Block> Read(IReadOnlyList<LogicalLine> lines, PhraseBook phrases, List<Diagnostic> problems, GrammarNotes? notes = null)
    {
        var reader = new BlockReader(phrases, problems, notes);
        foreach (var line in lines)
        {
            reader.Add(line);
        }

        return reader._blocks;
    }

    private void Add(LogicalLine line)
    {
        var head = line.WordAt(0);
        if (LineTable.HeadOf(line, _current?.Kind) is var (kind, grammar))
        {
            Start(line, kind, grammar);
        }
        else
        {
            AddBody(line, head);
        }
    }

    private void Start(LogicalLine line, BlockKind kind, Parser<Token, LineSyntax> grammar)
    {
        var head = Parse(line, grammar, 1, kind) as HeadLine;
        _current = new Block(kind, line.Span) { Head = head, IsBroken = head is null };
        _blocks.Add(_current);
        _bulletsMayFollow = false;
    }

    private void AddBody(LogicalLine line, string head)
    {
        if (_current is null)
        {
            Unreadable(line, head);
            return;
        }

        // Sources stand inside `records`, so one of its own lines ends the source above it.
        if (_current.Kind == BlockKind.Source && LineTable.GoesOnWithRecords(line) && _blocks.FindLast(block => block.Kind == BlockKind.Records) is { } records)
        {
            _current = records;
        }

        _current.HasBody = true;
        var kind = _current.Kind;
        if (kind == BlockKind.Rule && RuleForSome.In(_phrases.Fuse(line, 1), _current) is { } forSome)
        {
            _problems.Add(forSome);
            _current.IsBroken = true;
            return;
        }

        if (line.Tokens[0].Kind == TokenKind.Bullet && LineTable.TakesBullets(kind))
        {
            AddBullet(line);
        }
        else if (kind == BlockKind.Source && line.Tokens[0].Kind != TokenKind.Bullet && LineTable.SaysWhatAColumnIs(line))
        {
            Keep(Parse(line, Column, 0, kind) as BodyLine);
        }
        else if (LineTable.BodyOf(kind, line) is { } grammar)
        {
            Keep(Parse(line, grammar, 1, kind) as BodyLine);
        }
        else if (kind == BlockKind.Records && LineTable.SaysWhatBlankIs(line))
        {
            Keep(Parse(line, BlankOf, 0, kind) as BodyLine);
        }
        else if (kind == BlockKind.Example && MayBeRecord(line, head))
        {
            Keep(Parse(line, line.WordAt(1) == "of" ? OfHerMob : Recorded, 0, kind) as BodyLine);
        }
        else if (MayBeCondition(kind, line, head))
        {
            Keep(Parse(line, Condition, 0, kind) as BodyLine);
        }
        else
        {
            Unreadable(line, head);
        }
    }

    /// <summary>
    /// A record may start with any name. A line that belongs elsewhere, or ends in a text as heads do, is not taken for one: it may have
    /// been the head of a rule.
    /// </summary>
    private static bool MayBeRecord(LogicalLine line, string head) =>
        line.Tokens[0].Kind != TokenKind.Bullet
        && (line.Tokens.Any(token => token.Kind == TokenKind.Date) || !LineTable.HomesOf(head).Any(home => home is BlockKind.Rule or BlockKind.Change or BlockKind.Waive))
        && !(line.Tokens.Length <= 3 && line.Tokens[^1].Kind == TokenKind.Text && NearestName.To(line.Tokens[0].Text, LineTable.Heads.Keys) is not null);

    private bool MayBeCondition(BlockKind kind, LogicalLine line, string head)
    {
        if (kind == BlockKind.Unreadable)
        {
            return LanguageWords.Has(head, WordRole.StartsCondition);
        }

        return LineTable.TakesCondition(kind) && line.Tokens[0].Kind != TokenKind.Bullet
            && _current!.First<ConditionLine>() is null && !LineTable.Bodies(BlockKind.Unreadable).ContainsKey(head);
    }

    private void AddBullet(LogicalLine line)
    {
        if (!_bulletsMayFollow && _current!.Kind != BlockKind.Unreadable)
        {
            _problems.Add(LineProblems.BulletWithoutList(line.Tokens[0].Span));
            _current.IsBroken = true;
        }

        if (Parse(line, _current!.Kind == BlockKind.Source ? Cell : Bullet, 1, _current.Kind) is BodyLine bullet)
        {
            _current!.Lines.Add(bullet);
        }
        else
        {
            _current!.IsBroken = true;
        }
    }

    private void Keep(BodyLine? body)
    {
        // After a line that could not be read a bullet is no further mistake: a list may have started there.
        _bulletsMayFollow = body is null or NeedsLine { Condition: ListHeadSyntax } or SuitsLine { Condition: ListHeadSyntax } or ConditionLine { Condition: ListHeadSyntax } or ColumnLine;
        if (body is null)
        {
            _current!.IsBroken = true;
            return;
        }

        if (body.OnlyOnce is { } words && _current!.Kind != BlockKind.Unreadable && FirstBeside(body) is { } first)
        {
            _problems.Add(LineProblems.Twice(body.Span, words, first.Span));
            _current.IsBroken = true;
        }

        _current!.Lines.Add(body);
    }

    /// <summary>A line of the same kind as one that stands once. In <c>records</c> each promise, and whatever else a person
    /// answers for, has its own reason and agreement.</summary>
    private BodyLine? FirstBeside(BodyLine body)
    {
        var lines = _current!.Lines;
        var from = body is BecauseLine or AgreedByLine ? lines.FindLastIndex(line => line is ReasonedLine) + 1 : 0;
        return lines.Skip(from).FirstOrDefault(other => other.GetType() == body.GetType());
    }

    /// <summary>Nothing says what this line was meant to be.</summary>
    private void Unreadable(LogicalLine line, string head)
    {
        if (!ReportBad(line))
        {
            var homes = LineTable.HomesOf(head).ToList();
            _problems.Add(
                line.Tokens[0].Kind == TokenKind.Text ? TextProblems.LineStartsWithText(line.Tokens[0].Span)
                : line.Tokens[0].Kind == TokenKind.Bullet ? LineProblems.BulletWithoutList(line.Tokens[0].Span)
                : homes.Count > 0 ? LineProblems.NoPlaceHere(line.Tokens[0].Span, _current?.Kind, homes)
                : LineProblems.UnknownLine(line, _current?.Kind));
        }

        if (_current is not null && LineTable.HasBody(_current.Kind))
        {
            _current.IsBroken = true;
        }

        if (_current?.Kind != BlockKind.Unreadable)
        {
            _current = new Block(BlockKind.Unreadable, line.Span) { IsBroken = true };
            _blocks.Add(_current);
        }
    }

    private LineSyntax? Parse(LogicalLine line, Parser<Token, LineSyntax> grammar, int namesFrom, BlockKind block)
    {
        if (ReportBad(line))
        {
            return null;
        }

        var fused = _phrases.Fuse(line, namesFrom);
        if ((Repeated.In(fused.Tokens) ?? RepeatedInAName(line)) is { } again)
        {
            _problems.Add(LineProblems.StandsTwice(again.Span));
            return null;
        }

        if (HoldsCondition(grammar, line))
        {
            if (UnclearForms.In(fused, namesFrom, _phrases) is { } unclear)
            {
                _problems.Add(unclear);
                return null;
            }

            fused = OneForm.Of(fused, namesFrom, _phrases);
        }

        _notes?.Begin(fused, block);
        var result = grammar.Parse(fused.Tokens, _notes);
        if (result.Success)
        {
            _notes?.End();
            return result.Value;
        }

        _problems.Add(ParseProblems.Of(fused, result.Error!));
        return null;
    }

    private static bool HoldsCondition(Parser<Token, LineSyntax> grammar, LogicalLine line) =>
        grammar == Condition || grammar == Bullet || line.WordAt(0) is "needs" or "suits";

    // With the word before it, so that in `event event heat` no event is declared by the name `event heat`.
    private static Token? RepeatedInAName(LogicalLine line) =>
        DeclaredNames.In(line).Select(name => Repeated.In(line.Tokens.AsSpan(name.Start - 1, name.Count + 1))).FirstOrDefault(twice => twice is not null);

    private bool ReportBad(LogicalLine line)
    {
        foreach (var token in line.Tokens)
        {
            if (token.Problem is { } problem)
            {
                _problems.Add(problem);
            }
        }

        return line.IsBad;
    }
}
