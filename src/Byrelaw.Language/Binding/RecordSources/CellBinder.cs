namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>Binds <c>- "PD+" is pregnancy test, pregnant</c>: what a text of a column means.</summary>
/// <param name="context">Names, and where problems go.</param>
/// <param name="rows">What a row of the source is about.</param>
/// <param name="column">What the column is.</param>
internal sealed class CellBinder(Context context, SourceRows rows, SourceTarget column)
{
    /// <summary>The meaning; null where it could not be bound.</summary>
    public CellMeaning? Bind(CellLine line)
    {
        var answer = line.Clauses.OfType<CellPartSyntax>().FirstOrDefault(part => part is { Heading: null, Value: null });
        if (Meaning(line.Meaning, answer) is not { } meaning)
        {
            return null;
        }

        if ((Turned(line.Cell.Value, meaning) ?? TurnedRound(line, meaning) ?? NoLongerByHand(line.Cell.Value, meaning)) is { } said)
        {
            return context.Fail<CellMeaning>(SourceProblems.SaysOtherwise(line.Cell.Span, said));
        }

        if (meaning is IsKind ends && DaysToCome.AreMeant(line.Cell.Value, ends.Kind))
        {
            return context.Fail<CellMeaning>(WordProblems.StillToCome(line.Cell.Span, line.Cell.Value, ends.Kind.Name));
        }

        var parts = line.Clauses.OfType<CellPartSyntax>().Where(part => part != answer).Select(part => Part(part, meaning)).OfType<CellPart>();
        return new CellMeaning(line.Cell.Value, line.WhereHeading is { } heading ? new CellSaid(heading.Value, line.WhereCell!.Value) : null, meaning, line.Span)
        {
            Unit = context.Unit(line.Clauses.OfType<InUnitSyntax>().FirstOrDefault()),
            Times = line.Clauses.OfType<TimesSyntax>().FirstOrDefault()?.Factor.Value ?? 1,
            Parts = [.. parts],
        };
    }

    /// <summary>A value in the spelling of the landed files; null, and a problem, where there is no such value.</summary>
    public static string? Value(Context context, SourceTarget target, NameSyntax value) => target switch
    {
        FactTarget { Fact: { Type: FactType.OneOf } fact } => Among(context, value, fact.Name, fact.Values),
        KindTarget { Kind: TestKind test } => test.PlaceOf(value.Text) is >= 0 and var place
            ? test.Answers[place]
            : context.Fail<string>(NameProblems.NoSuchAnswer(value.Span, value.Text, test.Name, test.Answers)),
        LandedTarget { Column: "sex" } => Among(context, value, "sex", ["F", "M", "steer"]),
        LandedTarget { Column: "kind" } => context.Kinds([value]) is [var kind] ? kind.Name : null,
        _ => value.Text,
    };

    private static string? Among(Context context, NameSyntax value, string name, ImmutableArray<string> values)
    {
        var folded = NameFolding.Fold(value.Text);
        return values.FirstOrDefault(one => NameFolding.Fold(one) == folded) ?? context.Fail<string>(NameProblems.NoSuchValue(value.Span, value.Text, name, values));
    }

    private CellIs? Meaning(CellMeaningSyntax meaning, CellPartSyntax? answer)
    {
        if (meaning is CellLimitSyntax limit)
        {
            return column is KindTarget { Kind: MeasureKind } or LandedTarget { Column: "value" }
                ? new IsLimit(limit.IsLess, limit.Limit.Value)
                : context.Fail<CellIs>(SourceProblems.DoesNotGoWith(limit.Span, column.Name));
        }

        var name = ((CellNameSyntax)meaning).Name;
        var folded = NameFolding.Fold(name.Text);
        var isKind = column is LandedTarget { Column: "kind" };
        return folded switch
        {
            "blank" => new IsBlank(),
            "left out" when isKind => new IsLeftOut(),
            "pending" when column is KindTarget { Kind: not EventKind } or LandedTarget { Column: "value" } => new IsPending(),
            _ when isKind => Kind(name, answer),
            _ when answer is not null => context.Fail<CellIs>(SourceProblems.DoesNotGoWith(answer.Span, column.Name)),
            _ => Value(context, column, name) is { } value ? new IsValue(value) : null,
        };
    }

    /// <summary>What a text is made to mean though it is itself the name of another such value: whoever wrote <c>pregnant</c> meant pregnant.</summary>
    private string? Turned(string cell, CellIs meaning)
    {
        if (((meaning as IsValue)?.Text ?? (meaning as IsKind)?.Answer) is not { } said || NameFolding.Fold(cell) == NameFolding.Fold(said))
        {
            return null;
        }

        IEnumerable<ImmutableArray<string>> values = (column, meaning) switch
        {
            (_, IsKind { Kind: TestKind test }) => [test.Answers],
            (KindTarget { Kind: TestKind test }, _) => [test.Answers],
            (FactTarget { Fact: var fact }, _) => [fact.Values],
            (LandedTarget { Column: "sex" }, _) => [["F", "M", "steer"]],
            (LandedTarget { Column: "value" }, _) => Kinds().OfType<TestKind>().Select(test => test.Answers),
            (DetailTarget { Detail: var name }, _) => Kinds().SelectMany(kind => kind.Details).Where(detail => NameFolding.Fold(detail.Name) == NameFolding.Fold(name)).Select(detail => detail.Values),
            _ => [],
        };
        return values.Any(some => Holds(some, cell) && Holds(some, said)) ? said : null;

        static bool Holds(ImmutableArray<string> values, string one) => values.Any(value => NameFolding.Fold(value) == NameFolding.Fold(one));
    }

    /// <summary>What a text is made to mean though it says in its own words that a calf was found: <c>"not empty" is empty</c>.</summary>
    private string? TurnedRound(CellLine line, CellIs meaning)
    {
        if (((meaning as IsValue)?.Text ?? (meaning as IsKind)?.Answer) is not { } said)
        {
            return null;
        }

        IEnumerable<TestKind> tests = (column, meaning) switch
        {
            (_, IsKind { Kind: TestKind test }) => [test],
            (KindTarget { Kind: TestKind test }, _) => [test],
            (LandedTarget { Column: "value" }, _) => Kinds().OfType<TestKind>().Where(test => test.PlaceOf(said) >= 0),
            _ => [],
        };
        return tests.Any(test => OtherTests.TurnRound(line.Cell.Value, line.WhereCell?.Value, said, test)) ? said : null;
    }

    /// <summary>What a text is made to mean though it says that a hand felt for the calf: a hand clears later than whatever else it could be read as.</summary>
    private string? NoLongerByHand(string cell, CellIs meaning) => column is not DetailTarget { Detail: var detail } || NameFolding.Fold(detail) != "method" || !CalfWords.ByHand(cell) ? null
        : meaning switch { IsBlank => "blank", IsValue { Text: var said } when NameFolding.Fold(said) != "hand" => said, _ => null };

    private IEnumerable<Kind> Kinds() => context.Names.All.Select(name => name.Symbol).OfType<KindSymbol>().Select(symbol => symbol.Kind);

    private IsKind? Kind(NameSyntax name, CellPartSyntax? answer)
    {
        if (context.Kinds([name]) is not [var kind])
        {
            return null;
        }

        if (answer is null)
        {
            return new IsKind(kind, null);
        }

        return kind is not TestKind test ? context.Fail<IsKind>(SourceProblems.DoesNotGoWith(answer.Span, kind.Name))
            : NameFolding.Fold(answer.What.Text) == "pending" ? new IsKind(kind, "pending")
            : Value(context, new KindTarget(test), answer.What) is { } said ? new IsKind(kind, said)
            : null;
    }

    private CellPart? Part(CellPartSyntax part, CellIs meaning)
    {
        var kind = (meaning as IsKind)?.Kind ?? (column as KindTarget)?.Kind;
        if (NameFolding.Fold(part.What.Text) == "value" && rows == SourceRows.Events)
        {
            return new CellPart(new LandedTarget("value"), part.Heading?.Value, part.Value?.Text);
        }

        var folded = NameFolding.Fold(part.What.Text);
        if (kind?.Details.FirstOrDefault(one => NameFolding.Fold(one.Name) == folded) is not { } detail)
        {
            return kind is null ? context.Fail<CellPart>(SourceProblems.DoesNotGoWith(part.Span, column.Name)) : context.Fail<CellPart>(FilterProblems.NoSuchDetail(part.What.Span, kind));
        }

        if (part.Value is not { } value)
        {
            return new CellPart(new DetailTarget(detail.Name), part.Heading!.Value, null);
        }

        var said = detail.Type == FactType.OneOf ? Among(context, value, detail.Name, detail.Values) : value.Text;
        return said is null ? null : new CellPart(new DetailTarget(detail.Name), null, said);
    }
}
