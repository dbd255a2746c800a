namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>
/// Binds <c>from "ade", as layout "ICAR ADE"</c>: the lines that are built in for the ICAR Animal Data Exchange (version 1.3), as far as the farm's words have what they name, and the lines
/// below, which go before those of the same. It is two sources in one: what animals are, and what happened to them.
/// </summary>
internal static class AdeBinder
{
    private const string Ade = "icar ade";

    // What a message says happened, and as what it is read. Repro/icarReproInseminationType and the other enumerations of the exchange.
    private static readonly ImmutableArray<(string Cell, string Kind, string? Method)> Happenings =
    [
        ("Insemination", "mating", "inseminated"), ("NaturalService", "mating", "natural"), ("RunWithBull", "bull in", null), ("RunWithBull ends", "bull out", null),
        ("Implantation", "transfer", null), ("PregnancyCheck", "pregnancy test", null), ("DryOff", "drying off", null), ("LactationStatus Dry", "drying off", null), ("Lactation ends", "drying off", null), ("Parturition", "calving", null),
        ("Abortion", "abortion", null), ("Heat", "heat", null), ("Departure", "sale", null), ("Death", "death", null), ("Arrival", "purchase", null), ("Mob", "mob", null),
    ];

    private static readonly ImmutableArray<(string Cell, string Value)> Results = [("Empty", "empty"), ("Pregnant", "pregnant"), ("Multiple", "pregnant"), ("Unknown", "pending")];

    private static readonly ImmutableArray<(string Cell, string Value)> Methods = [("Echography", "ultrasound"), ("Palpation", "hand"), ("Blood", "blood"), ("Milk", "milk")];

    private static readonly ImmutableArray<(string Cell, string Value)> Sexes = [("Female", "F"), ("FemaleNeuter", "F"), ("Male", "M"), ("MaleCryptorchid", "M"), ("MaleNeuter", "steer")];

    /// <summary>The two sources.</summary>
    public static IEnumerable<RecordSource> Bind(Context context, Block block, FromLine from, LayoutSyntax layout)
    {
        var errors = context.Problems.Count(problem => problem.Severity == Severity.Error);
        if (NameFolding.Fold(layout.Name.Value) != Ade)
        {
            context.Problems.Add(SourceProblems.NoSuchLayout(layout.Name.Span));
        }

        if (FileLoader.PathProblem(from.File.Span, from.File.Value) is { } path)
        {
            context.Problems.Add(path);
        }

        var zone = from.Option<TimesInSyntax>()?.Zone;
        if (zone is not null && DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone.Value) is null)
        {
            context.Problems.Add(SourceProblems.NoSuchZone(zone.Span));
        }

        foreach (var option in from.Options.Where(option => option is not (LayoutSyntax or TimesInSyntax or SourceUpToSyntax)))
        {
            context.Problems.Add(SourceProblems.NotOfALayout(option.Span));
        }

        foreach (var line in block.Lines.Where(line => line is not (ColumnLine or CellLine)))
        {
            context.Problems.Add(SourceProblems.NotOfALayout(line.Span));
        }

        var (animals, events) = (Own(context, block, SourceRows.Animals), Own(context, block, SourceRows.Events));
        var source = new RecordSource(from.File.Value, SourceRows.Animals, from.Span) { IsAde = true, TimesIn = zone?.Value, UpTo = from.Option<SourceUpToSyntax>()?.Day.Value };
        var isBroken = block.IsBroken || context.Problems.Count(problem => problem.Severity == Severity.Error) > errors;
        return
        [
            source with { Columns = Over(animals, OfAnimals(from.Span)), IsBroken = isBroken },
            source with { Rows = SourceRows.Events, Columns = Over(events, OfEvents(context, from.Span)), IsBroken = isBroken },
        ];
    }

    /// <summary>The farm's own lines about animals, or about what happened to them.</summary>
    private static List<SourceColumn> Own(Context context, Block block, SourceRows rows)
    {
        var own = new List<SourceColumn>();
        for (var i = 0; i < block.Lines.Count; i++)
        {
            if (block.Lines[i] is ColumnLine line && rows == RowsOf(context, line)
                && new ColumnBinder(context, rows).Bind(line, [.. block.Lines.Skip(i + 1).TakeWhile(below => below is CellLine).Cast<CellLine>()]) is { } column)
            {
                own.Add(column);
            }
        }

        return own;
    }

    /// <summary>Facts, births and sexes are of animals; whose number a row has is asked of what happened.</summary>
    private static SourceRows RowsOf(Context context, ColumnLine line) =>
        context.Names.Find(line.What.Text) is FactSymbol || NameFolding.Fold(line.What.Text) is "born" or "sex" or "parity" or "parity on" or "mob" ? SourceRows.Animals : SourceRows.Events;

    /// <summary>The farm's lines, and those that are built in of what it says nothing of. Its bullets go before the ones that are built in.</summary>
    private static ImmutableArray<SourceColumn> Over(List<SourceColumn> own, IEnumerable<SourceColumn> builtIn)
    {
        var all = ImmutableArray.CreateBuilder<SourceColumn>();
        foreach (var column in builtIn)
        {
            var its = own.Find(one => one.What == column.What);
            own.RemoveAll(one => one.What == column.What);
            all.Add(its is null ? column : its with { Cells = [.. its.Cells, .. column.Cells.Where(cell => !its.Cells.Any(said => NameFolding.Fold(said.Cell) == NameFolding.Fold(cell.Cell)))] });
        }

        all.AddRange(own);
        return all.ToImmutable();
    }

    private static IEnumerable<SourceColumn> OfAnimals(SourceSpan at) =>
    [
        new SourceColumn(new LandedTarget("animal"), "animal", at),
        new SourceColumn(new LandedTarget("born"), "born", at),
        new SourceColumn(new LandedTarget("sex"), "sex", at) { Cells = [.. Sexes.Select(sex => Value(sex.Cell, sex.Value, at)), new CellMeaning("Unknown", null, new IsBlank(), at)] },
        new SourceColumn(new LandedTarget("mob"), "mob", at),
    ];

    private static IEnumerable<SourceColumn> OfEvents(Context context, SourceSpan at)
    {
        yield return new SourceColumn(new LandedTarget("animal"), "animal", at);
        yield return new SourceColumn(new LandedTarget("date"), "date", at);
        yield return new SourceColumn(new LandedTarget("note"), "remark", at);
        yield return new SourceColumn(new LandedTarget("value"), "value", at)
        {
            Cells = [.. Results.Select(result => result.Value == "pending" ? new CellMeaning(result.Cell, null, new IsPending(), at) : Value(result.Cell, result.Value, at))],
        };
        yield return new SourceColumn(new LandedTarget("kind"), "what", at)
        {
            Cells =
            [
                new CellMeaning("Left out", null, new IsLeftOut(), at),
                .. Happenings.Where(one => context.Names.Find(one.Kind) is KindSymbol).Select(one => Happening(one.Cell, ((KindSymbol)context.Names.Find(one.Kind)!).Kind, one.Method, at)),
            ],
        };
        if (context.Names.Find("pregnancy test") is KindSymbol { Kind: var test } && test.Details.FirstOrDefault(detail => detail.Name == "method") is { Type: FactType.OneOf } method)
        {
            yield return new SourceColumn(new DetailTarget(method.Name), "method", at)
            {
                Cells = [.. Methods.Where(one => method.Values.Contains(one.Value)).Select(one => Value(one.Cell, one.Value, at)), new CellMeaning("Visual", null, new IsBlank(), at), new CellMeaning("Other", null, new IsBlank(), at)],
            };
        }

        if (context.Names.Find("calving") is KindSymbol { Kind: var calving } && calving.Details.FirstOrDefault(detail => detail.Name == "ease") is { } ease)
        {
            yield return new SourceColumn(new DetailTarget(ease.Name), "ease", at);
        }
    }

    private static CellMeaning Happening(string cell, Kind kind, string? method, SourceSpan at)
    {
        var parts = ImmutableArray.CreateBuilder<CellPart>();
        if (method is not null && kind.Details.Any(detail => detail.Name == "method" && (detail.Type != FactType.OneOf || detail.Values.Contains(method))))
        {
            parts.Add(new CellPart(new DetailTarget("method"), null, method));
        }

        if (kind.Details.Any(detail => detail.Name == "sire"))
        {
            parts.Add(new CellPart(new DetailTarget("sire"), "sire", null));
        }

        return new CellMeaning(cell, null, new IsKind(kind, null), at) { Parts = parts.ToImmutable() };
    }

    private static CellMeaning Value(string cell, string value, SourceSpan at) => new(cell, null, new IsValue(value), at);
}
