namespace Byrelaw.Language.Binding.Examples;

/// <summary>Binds what an example expects.</summary>
internal static class ExpectationBinder
{
    /// <summary>Binds; null where something in it is wrong.</summary>
    public static Expectation? Bind(Context context, ExpectLine line, RuleBinder rules)
    {
        var before = context.Problems.Count;
        if (Target(context, line, rules) is not var (of, name))
        {
            return null;
        }

        if (!ExpectedAnswerWords.That(of).Contains(line.Answer))
        {
            context.Problems.Add(ExampleProblems.NotAnAnswerOf(line.AnswerSpan, line.Answer, of));
        }

        if (of == ExpectationOf.List && line.Answer != ExpectedAnswer.Later && line.Clauses.FirstOrDefault(clause => clause.Kind == ExpectClause.NotBefore) is { } early)
        {
            context.Problems.Add(ExampleProblems.NotBeforeOfAnother(early.Span, line.AnswerSpan, line.Answer));
        }

        var expectation = new Expectation(of, name, line.Answer, line.Span)
        {
            From = Day(context, line, ExpectClause.From, "from", of, true),
            Until = Day(context, line, ExpectClause.Until, "until", of, true),
            NotBefore = Day(context, line, ExpectClause.NotBefore, "not before", of, of == ExpectationOf.List),
            BecauseOf = Names(context, line, ExpectClause.BecauseOf, "because of", name => of == ExpectationOf.List ? Rule(context, name, rules) : Record(context, name, true)),
            Missing = Names(context, line, ExpectClause.Missing, "missing", name => Record(context, name, false)),
        };
        return context.Problems.Count == before ? expectation : null;
    }

    private static (ExpectationOf Of, string Name)? Target(Context context, ExpectLine line, RuleBinder rules)
    {
        if (line.Rule is { } written)
        {
            return rules.Find(written.Value) switch
            {
                { Rule: not null, Drop: null } rule => (ExpectationOf.Rule, rule.Name),
                { Prefer: not null } prefer => (ExpectationOf.Prefer, prefer.Name),
                _ => context.None<(ExpectationOf, string)>(ExampleProblems.NoSuchRule(written.Span, written.Value, rules.Nearest(written.Value))),
            };
        }

        var name = line.Name!;
        if (rules.FindList(name.Text) is { } list)
        {
            return (ExpectationOf.List, list);
        }

        var found = context.Names.Find(name.Text);
        if (found is DefineSymbol)
        {
            return (ExpectationOf.Define, found.Name);
        }

        var near = NearestName.To(name.Text, rules.Lists.Select(known => known.Name)) ?? context.Names.Nearest(name.Text, symbol => symbol is DefineSymbol)?.Spelling;
        return context.None<(ExpectationOf, string)>(ExampleProblems.NoSuchTarget(name.Span, name.Text, found, near));
    }

    private static LocalDate? Day(Context context, ExpectLine line, ExpectClause kind, string words, ExpectationOf of, bool hasPlace)
    {
        var clause = Only(context, line, kind, words);
        if (clause is not null && !hasPlace)
        {
            context.Problems.Add(ExampleProblems.ClauseHasNoPlace(clause.Span, words, of));
        }

        return clause?.Day!.Value;
    }

    private static ImmutableArray<string> Names(Context context, ExpectLine line, ExpectClause kind, string words, Func<NameSyntax, string?> find) =>
        [.. (Only(context, line, kind, words)?.Names ?? []).Select(find).OfType<string>().Distinct()];

    private static ExpectClauseSyntax? Only(Context context, ExpectLine line, ExpectClause kind, string words)
    {
        ExpectClauseSyntax[] said = [.. line.Clauses.Where(clause => clause.Kind == kind)];
        if (said.Length > 1)
        {
            context.Problems.Add(ExampleProblems.ClauseTwice(said[1].Span, words));
        }

        return said.FirstOrDefault();
    }

    private static string? Rule(Context context, NameSyntax name, RuleBinder rules) =>
        rules.Find(name.Text) is { Rule: not null, Drop: null } rule ? rule.Name
        : context.Fail<string>(ExampleProblems.NoSuchRule(name.Span, name.Text, rules.Nearest(name.Text)));

    /// <summary>A kind, a fact, or what else stands in records; a defined condition where that may be the reason.</summary>
    private static string? Record(Context context, NameSyntax name, bool mayBeDefine) => context.Names.Find(name.Text) switch
    {
        (KindSymbol or FactSymbol or BuiltInSymbol { Name: "parity" }) and { } symbol => symbol.Name,
        DefineSymbol define when mayBeDefine => define.Name,
        null when NameFolding.Fold(name.Text) is "born" or "sex" => NameFolding.Fold(name.Text),
        _ => context.Fail<string>(context.NotFound(
            name, symbol => symbol is KindSymbol or FactSymbol || (mayBeDefine && symbol is DefineSymbol),
            mayBeDefine ? "an event, measure, test, fact or defined condition" : "an event, measure, test or fact")),
    };
}
