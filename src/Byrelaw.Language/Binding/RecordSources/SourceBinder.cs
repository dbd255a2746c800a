using Byrelaw.Language.Binding.Farm;

namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>Binds a <c>from</c> and the lines below it. A source with a line that cannot be bound is broken: what it might have said is not known.</summary>
internal sealed class SourceBinder
{
    private const int MostSources = 200;

    private readonly Context _context;
    private readonly Block _block;
    private readonly FromLine _from;
    private readonly SourceRows _rows;
    private readonly int _problemsBefore;

    private SourceBinder(Context context, Block block, FromLine from, SourceRows rows)
    {
        _context = context;
        _block = block;
        _from = from;
        _rows = rows;
        _problemsBefore = Errors(context);
    }

    private static int Errors(Context context) => context.Problems.Count(problem => problem.Severity == Severity.Error);

    /// <summary>Binds all sources of a farm, in the order in which they stand.</summary>
    public static ImmutableArray<RecordSource> Bind(Context context, IEnumerable<Block> blocks)
    {
        var sources = ImmutableArray.CreateBuilder<RecordSource>();
        foreach (var block in blocks)
        {
            if (sources.Count >= MostSources)
            {
                context.Problems.Add(SourceProblems.TooMany(block.Span, MostSources));
                sources.Add(new RecordSource("", SourceRows.Events, block.Span) { IsBroken = true });
                break;
            }

            if (block.Head is FromLine from && from.Option<LayoutSyntax>() is { } layout)
            {
                sources.AddRange(AdeBinder.Bind(context, block, from, layout));
            }
            else
            {
                sources.Add(Bind(context, block));
            }
        }

        return sources.ToImmutable();
    }

    private static RecordSource Bind(Context context, Block block)
    {
        if (block.Head is not FromLine from)
        {
            return new RecordSource("", SourceRows.Events, block.Span) { IsBroken = true };
        }

        if (from.Option<RowForEachSyntax>() is not { Rows: var rows })
        {
            context.Problems.Add(SourceProblems.NoRowForEach(from.Span));
            return new RecordSource(from.File.Value, SourceRows.Events, block.Span) { IsBroken = true };
        }

        return new SourceBinder(context, block, from, rows).Bind();
    }

    private RecordSource Bind()
    {
        CheckOptions();
        var source = new RecordSource(_from.File.Value, _rows, _from.Span)
        {
            Sheet = _from.Option<SheetSyntax>()?.Name.Value,
            HeadingRows = HeadingRows(),
            Separator = _from.Option<SeparatorSyntax>()?.Separator ?? ',',
            LettersIn = _from.Option<EncodingSyntax>()?.Name.Text,
            AsAt = _from.Option<AsAtSyntax>()?.Day.Value,
            UpTo = _from.Option<SourceUpToSyntax>()?.Day.Value,
            Dates = _block.First<DateOrderLine>()?.Order ?? DateOrder.YearFirst,
            HasDecimalComma = _block.First<DecimalCommaLine>() is not null || _block.First<ThousandsLine>() is { Sign: '.' },
            Thousands = _block.First<ThousandsLine>()?.Sign,
            HasShortYears = _block.First<ShortYearsLine>() is not null,
            Columns = Columns(),
            EveryRow = [.. _block.Lines.OfType<EveryRowLine>().Select(EveryRow).OfType<EveryRow>()],
            RowsLeftOut = [.. _block.Lines.OfType<LeaveOutRowsLine>().Select(line => new CellSaid(line.Heading.Value, line.Cell.Value))],
            ColumnsLeftOut = [.. _block.Lines.OfType<LeaveOutColumnsLine>().SelectMany(line => line.Headings).Select(heading => heading.Value)],
        };
        CheckWhole(source);
        if (_block.First<ThousandsLine>() is { Sign: ',' } thousands && source.HasDecimalComma)
        {
            _context.Problems.Add(SourceProblems.TwoCommas(thousands.Span));
        }

        return source with { IsBroken = _block.IsBroken || Errors(_context) > _problemsBefore };
    }

    private void CheckOptions()
    {
        if (_from.Option<TimesInSyntax>() is { } times)
        {
            _context.Problems.Add(SourceProblems.TimesOfAText(times.Span));
        }

        if (FileLoader.PathProblem(_from.File.Span, _from.File.Value) is { } path)
        {
            _context.Problems.Add(path);
        }

        foreach (var again in _from.Options.GroupBy(option => option.Words).Where(group => group.Count() > 1))
        {
            _context.Problems.Add(LineProblems.Twice(again.ElementAt(1).Span, again.Key, again.First().Span));
        }

        if (_from.Option<EncodingSyntax>() is { } letters && !SourceLetters.IsKnown(letters.Name.Text))
        {
            _context.Problems.Add(SourceProblems.UnknownLetters(letters.Name.Span));
        }
    }

    private (int First, int Last) HeadingRows()
    {
        if (_from.Option<HeadingsSyntax>() is not { } rows)
        {
            return (1, 1);
        }

        var (first, last) = (rows.First.Value, (rows.Last ?? rows.First).Value);
        if (first >= 1 && first <= last && last <= SourceLetters.MostHeadingRow && first == Math.Floor(first) && last == Math.Floor(last))
        {
            return ((int)first, (int)last);
        }

        _context.Problems.Add(SourceProblems.NotAHeadingRow(rows.Span));
        return (1, 1);
    }

    /// <summary>Each column with the bullets below it.</summary>
    private ImmutableArray<SourceColumn> Columns()
    {
        var columns = ImmutableArray.CreateBuilder<SourceColumn>();
        for (var i = 0; i < _block.Lines.Count; i++)
        {
            if (_block.Lines[i] is ColumnLine line && new ColumnBinder(_context, _rows).Bind(line, [.. _block.Lines.Skip(i + 1).TakeWhile(below => below is CellLine).Cast<CellLine>()]) is { } column)
            {
                if (columns.FirstOrDefault(other => other.What == column.What) is { } first)
                {
                    _context.Problems.Add(SourceProblems.SaidTwice(line.Span, column.What.Name, first.Span));
                }

                columns.Add(column);
            }
        }

        return columns.ToImmutable();
    }

    private EveryRow? EveryRow(EveryRowLine line)
    {
        if (line.Of is null && _context.Target(line.What, _rows) is var target && target is not DetailTarget)
        {
            return target is null ? null
                : target is LandedTarget { Column: "kind" } && _rows == SourceRows.Animals ? _context.Fail<EveryRow>(SourceProblems.DoesNotGoWith(line.Span, "a row for each animal"))
                : new EveryRow(target, CellBinder.Value(_context, target, line.Value) ?? line.Value.Text, line.Span);
        }

        return BlanksBinder.Bind(_context, line.What, line.Of, line.Value, line.Span) is { } blank
            ? new EveryRow(new DetailTarget(blank.Kind.Details[blank.Place].Name), blank.Value, line.Span) { Kind = blank.Kind }
            : null;
    }

    /// <summary>Whether what is said of last entries can be told: up to which day they are the last, and since which entry there was none.</summary>
    private void CheckLast(RecordSource source)
    {
        foreach (var column in source.Columns.Where(column => column.IsLast))
        {
            if (source.AsAt is null && _rows == SourceRows.Animals)
            {
                _context.Problems.Add(SourceProblems.LastUpToWhen(column.Span, column.What.Name));
            }

            if (column.Blank?.SinceLast is { } since && !source.Columns.Any(other => other is { IsLast: true, What: KindTarget { Kind: EventKind kind } } && kind.Id == since.Id && other != column))
            {
                _context.Problems.Add(SourceProblems.NoSuchLast(column.Span, since.Name));
            }
        }
    }

    /// <summary>Whether the lines say enough to read a row.</summary>
    private void CheckWhole(RecordSource source)
    {
        bool Says(string column) => source.Columns.Any(one => one.What is LandedTarget target && target.Column == column)
            || source.EveryRow.Any(one => one.What is LandedTarget target && target.Column == column);
        CheckLast(source);
        if (_block.IsBroken)
        {
            return;
        }

        if (!Says("animal"))
        {
            _context.Problems.Add(SourceProblems.Lacks(_from.Span, "animal"));
        }

        if (_rows == SourceRows.Events)
        {
            if (!Says("date"))
            {
                _context.Problems.Add(SourceProblems.Lacks(_from.Span, "date"));
            }

            if (!Says("kind") && !source.Columns.Any(column => column.What is KindTarget))
            {
                _context.Problems.Add(SourceProblems.Lacks(_from.Span, "kind"));
            }
        }
    }
}
