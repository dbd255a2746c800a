namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Conditions that start with a name: a fact, <c>age</c>, <c>parity</c>, a spell, a defined name.</summary>
internal static class NamedBinding
{
    /// <summary>Binds by what the name means.</summary>
    public static Condition? Named(this Context context, NamedSyntax named)
    {
        var symbol = context.Names.Find(named.Name.Text);
        if (named.Not && symbol is not (null or DefineSymbol or SpellSymbol))
        {
            return context.Fail<Condition>(ConditionProblems.NotBeforeThis(named.Name.Span, symbol.Sort));
        }

        var tails = new TailSorter(context, named, named.Name.Text);
        switch (symbol)
        {
            case DefineSymbol { Entry: var entry }:
                return tails.Finish(demandFound: false) ? new NamedCondition(entry.Name, entry.Index, named.Not) { Span = named.Span } : null;
            case SpellSymbol { Spell: var spell }:
                var windows = context.Windows(tails);
                return tails.Finish(demandFound: false) && spell is not null && windows is { } when
                    ? new SpellCondition(spell, named.Not, when) { Span = named.Span }
                    : null;
            case BuiltInSymbol { Name: "age" or "parity" } builtIn:
                return context.BuiltIn(named, builtIn, tails);
            case FactSymbol { Fact: var fact }:
                return context.Fact(named, fact, tails);
            case KindSymbol { Kind: EventKind happened }:
                return context.Fail<Condition>(WindowProblems.CountTheEvent(named.Name.Span, happened.Name, named.Span.Text));
            case KindSymbol found:
                return context.Fail<Condition>(WindowProblems.AskForAResult(named.Name.Span, found.Name, found.Sort));
            case null when context.TestsWithAnswer(named.Name.Text) is { Count: > 0 } tests:
                return context.Fail<Condition>(context.AnswerAlone(named, tests));
            default:
                return context.Fail<Condition>(context.NotFound(
                    named.Name, other => named.Not ? other is DefineSymbol or SpellSymbol : other is DefineSymbol or SpellSymbol or FactSymbol,
                    named.Not ? "a defined name or a spell" : "a fact, a spell or a defined name"));
        }
    }

    private static List<TestKind> TestsWithAnswer(this Context context, string answer) =>
        [.. context.Names.All.Select(name => name.Symbol).OfType<KindSymbol>().Select(symbol => symbol.Kind).OfType<TestKind>().Distinct().Where(test => test.PlaceOf(answer) >= 0)];

    /// <summary>An answer without its test. A line is shown only where one test has it, and where an old result lets nobody through who may be in calf.</summary>
    private static Diagnostic AnswerAlone(this Context context, NamedSyntax named, List<TestKind> tests)
    {
        var (test, answer) = (tests[0], named.Name.Text);
        return tests.Count > 1 ? ConditionProblems.AnswerOfSeveral(named.Span, answer, [.. tests.Select(one => one.Name)])
            : test.Name == "pregnancy test" && named.Not == (test.PlaceOf(answer) == test.PlaceOf("pregnant")) ? ConditionProblems.NotInCalfAlone(named.Span)
            : ConditionProblems.AnswerAlone(named.Span, $"latest {test.Name}{(context.Names.Find("calving") is KindSymbol ? " since last calving" : "")} is {(named.Not ? "not " : "")}{answer}");
    }

    private static Condition? BuiltIn(this Context context, NamedSyntax named, BuiltInSymbol builtIn, TailSorter tails)
    {
        var compare = tails.Take<CompareSyntax>();
        if (!tails.Finish(compare is not null))
        {
            return null;
        }

        if (compare is null)
        {
            return context.Fail<Condition>(ConditionProblems.NoDemand(
                named.Span, builtIn.Name, builtIn.Name == "age" ? "a comparison such as `at least 13 months`" : "a comparison such as `at most 6`"));
        }

        return builtIn.Name == "age"
            ? context.TimeTest(compare) is { } time ? new AgeCondition(time) { Span = named.Span } : null
            : context.CountTest(compare, builtIn.Name) is { } count ? new ParityCondition(count) { Span = named.Span } : null;
    }

    private static Condition? Fact(this Context context, NamedSyntax named, Fact fact, TailSorter tails)
    {
        var demand = tails.Take<RecordedSyntax>() ?? tails.Take<TopSyntax>() ?? tails.Take<IsSyntax>() ?? (TailSyntax?)tails.Take<CompareSyntax>();
        var fits = tails.Finish(demand is not null);
        var condition = demand switch
        {
            RecordedSyntax recorded => new RecordedCondition(fact, recorded.Not) { Span = named.Span },
            TopSyntax top => context.Standing(named, fact, top),
            IsSyntax @is => context.Is(named, fact, @is),
            CompareSyntax compare when IsNumber(fact) =>
                context.NumberTest(compare, AmountSubject.Of(fact)) is { } test ? new FactNumberCondition(fact, test) { Span = named.Span } : null,
            CompareSyntax compare => context.Fail<Condition>(WindowProblems.CompareWithWord(compare.Span, fact.Name)),
            _ => fits
                ? context.Fail<Condition>(ConditionProblems.NoDemand(named.Span, fact.Name, IsNumber(fact) ? "a comparison such as `at least 5`" : "`is` and a value"))
                : null,
        };
        return fits ? condition : null;
    }

    private static StandingCondition? Standing(this Context context, NamedSyntax named, Fact fact, TopSyntax top) =>
        !IsNumber(fact) ? context.Fail<StandingCondition>(WindowProblems.CompareWithWord(top.Span, fact.Name))
        : top.Percent.Value is not (> 0 and <= 100) ? context.Fail<StandingCondition>(ConditionProblems.TopOutOfRange(top.Percent.Span))
        : new StandingCondition(fact, top.Not, top.Percent.Value, top.Group) { WithValue = top.WithValue, Span = named.Span };

    private static Condition? Is(this Context context, NamedSyntax named, Fact fact, IsSyntax @is)
    {
        if (@is is { Not: true, IsJoinedByOr: true })
        {
            return context.Fail<Condition>(ConditionProblems.NotEither(named.Span, named.Name.Span.Text, [.. @is.Values.Select(value => value.Span.Text)]));
        }

        if (IsNumber(fact))
        {
            return context.Fail<Condition>(WindowProblems.IsWithNumber(@is.Span, fact.Name));
        }

        if (fact.Type == FactType.Date)
        {
            return @is.Values is [{ Date: { } date }]
                ? new FactDateCondition(fact, date.Value, @is.Not) { Span = named.Span }
                : context.Fail<Condition>(WindowProblems.OneDate(@is.Span, fact.Name));
        }

        return context.Values(fact, @is.Values) is { } values ? new FactTextCondition(fact, values, @is.Not) { Span = named.Span } : null;
    }

    private static ImmutableArray<string>? Values(this Context context, Fact fact, ImmutableArray<ValueSyntax> written)
    {
        var values = ImmutableArray.CreateBuilder<string>(written.Length);
        var isWhole = true;
        foreach (var value in written)
        {
            var declared = fact.Type == FactType.OneOf
                ? fact.Values.FirstOrDefault(other => NameFolding.Fold(other) == NameFolding.Fold(value.Text))
                : value.Text;
            if (declared is null)
            {
                context.Problems.Add(NameProblems.NoSuchValue(value.Span, value.Text, fact.Name, fact.Values));
                isWhole = false;
            }
            else if (!values.Contains(declared))
            {
                values.Add(declared);
            }
        }

        return isWhole ? values.ToImmutable() : null;
    }

    private static bool IsNumber(Fact fact) => fact.Type is FactType.Number or FactType.Amount;
}
