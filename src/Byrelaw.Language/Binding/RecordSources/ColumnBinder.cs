namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>Binds <c>serum copper in "Cu", in umol/L</c> and what stands below it.</summary>
/// <param name="context">Names, and where problems go.</param>
/// <param name="rows">What a row of the source is about.</param>
internal sealed class ColumnBinder(Context context, SourceRows rows)
{
    /// <summary>The column; null where nothing says of what it is.</summary>
    public SourceColumn? Bind(ColumnLine line, IReadOnlyList<CellLine> cells)
    {
        if (Target(line) is not { } what)
        {
            return null;
        }

        if (what is KindTarget { Kind: var ends } && DaysToCome.AreMeant(line.Heading.Value, ends))
        {
            return context.Fail<SourceColumn>(WordProblems.StillToCome(line.Heading.Span, line.Heading.Value, ends.Name));
        }

        var dated = Only<DatedSyntax>(line.Clauses);
        var column = new SourceColumn(what, line.Heading.Value, line.Span)
        {
            Unit = context.Unit(Only<InUnitSyntax>(line.Clauses)),
            Times = Only<TimesSyntax>(line.Clauses)?.Factor.Value ?? 1,
            DatedIn = dated?.Heading?.Value,
            Dated = dated?.Day?.Value,
            FoundBy = FoundBy(Only<FoundBySyntax>(line.Clauses)),
            IsByNumber = Only<FoundBySyntax>(line.Clauses) is { } by && IsNumber(by),
            AsAt = Only<CellAsAtSyntax>(line.Clauses)?.Day.Value,
            IsLast = line.Last is not null,
            Blank = Only<BlankIsSyntax>(line.Clauses) is { } blank ? Blank(blank) : null,
            Cells = [.. cells.Select(cell => new CellBinder(context, rows, what).Bind(cell)).OfType<CellMeaning>()],
        };
        Check(line, column);
        CheckCells(cells);
        return column;
    }

    private SourceTarget? Target(ColumnLine line)
    {
        if (line.Of is { } of)
        {
            return context.DetailNamed(line.What.Text) is { } detail ? new DetailTarget(detail) : context.Fail<SourceTarget>(SourceProblems.UnknownTarget(line.What.Span.To(of.Span), rows, null));
        }

        return context.Target(line.What, rows);
    }

    private T? Only<T>(ImmutableArray<CellClauseSyntax> clauses) where T : CellClauseSyntax
    {
        T? found = null;
        foreach (var clause in clauses)
        {
            if (clause is not T one)
            {
                continue;
            }

            if (found is not null)
            {
                context.Problems.Add(LineProblems.Twice(one.Span, one.Span.Text, found.Span));
            }

            found ??= one;
        }

        return found;
    }

    private bool IsNumber(FoundBySyntax by) => NameFolding.Fold(by.Fact.Text) == "number" && context.Names.Find(by.Fact.Text) is not FactSymbol;

    private Fact? FoundBy(FoundBySyntax? by) => by is null || IsNumber(by) ? null
        : context.Names.Find(by.Fact.Text) is FactSymbol { Fact: { Type: FactType.Identity or FactType.Text } fact } ? fact
        : context.Fail<Fact>(SourceProblems.NotFoundBy(by.Fact.Span));

    private BlankOfLast? Blank(BlankIsSyntax blank) =>
        blank.SinceLast is not { } since ? new BlankOfLast(null)
        : context.Kinds([since]) is [var kind] ? new BlankOfLast(kind)
        : null;

    /// <summary>Whether what happened last can be told of one animal by herself: not of who is in the herd or in a mob, and not of spells, which whole mobs begin and end.</summary>
    private bool CanBeLast(SourceTarget what) => rows == SourceRows.Animals && what is KindTarget { Kind: not EventKind { Effect: not HerdEffect.None } and var kind }
        && !context.Names.All.Select(name => name.Symbol).OfType<SpellSymbol>().Any(spell => spell.Spell is { Until.Name: not "calving" } one && (one.From == kind || one.Until == kind));

    /// <summary>Whether what is said behind commas fits what the column is.</summary>
    private void Check(ColumnLine line, SourceColumn column)
    {
        var isResultOfAnAnimal = rows == SourceRows.Animals && column.What is KindTarget { Kind: not EventKind } or LandedTarget { Column: "kind" };
        if (isResultOfAnAnimal && column.DatedIn is null && column.Dated is null)
        {
            context.Problems.Add(SourceProblems.WhichDay(line.Span, column.What.Name));
        }

        if (line.Last is { } last && !CanBeLast(column.What))
        {
            context.Problems.Add(SourceProblems.NoLast(last, column.What.Name, rows));
        }

        foreach (var clause in line.Clauses)
        {
            var fits = clause switch
            {
                DatedSyntax => isResultOfAnAnimal,
                FoundBySyntax => column.What is LandedTarget { Column: "animal" },
                BlankIsSyntax => column.IsLast,
                CellAsAtSyntax => column.What is LandedTarget { Column: "parity" },
                InUnitSyntax or TimesSyntax => TakesNumbers(column.What),
                _ => true,
            };
            if (!fits)
            {
                context.Problems.Add(SourceProblems.DoesNotGoWith(clause.Span, column.What.Name));
            }
        }
    }

    private static bool TakesNumbers(SourceTarget what) => what switch
    {
        KindTarget { Kind: MeasureKind } or LandedTarget { Column: "value" } or DetailTarget => true,
        FactTarget { Fact.Type: var type } => type is FactType.Amount or FactType.Number,
        _ => false,
    };

    private void CheckCells(IReadOnlyList<CellLine> cells)
    {
        foreach (var dash in cells.Where(cell => cell.Cell.Value.Trim() == "-" && cell.Meaning is not CellNameSyntax { Name.Text: "blank" }))
        {
            context.Problems.Add(SourceProblems.DashIsBlank(dash.Span));
        }

        var seen = new Dictionary<(string, string?, string?), CellLine>();
        foreach (var cell in cells)
        {
            var said = (NameFolding.Fold(cell.Cell.Value), Fold(cell.WhereHeading), Fold(cell.WhereCell));
            if (!seen.TryAdd(said, cell))
            {
                context.Problems.Add(SourceProblems.CellTwice(cell.Span, seen[said].Span));
            }
        }

        static string? Fold(TextSyntax? text) => text is null ? null : NameFolding.Fold(text.Value);
    }
}
