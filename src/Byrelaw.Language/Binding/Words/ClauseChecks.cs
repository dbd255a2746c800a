namespace Byrelaw.Language.Binding.Words;

/// <summary>Finds clauses that are said twice or contradict each other.</summary>
internal static class ClauseChecks
{
    /// <summary>Checks the clauses of a declaration's own line.</summary>
    public static void Check(Declared declared, List<Diagnostic> problems)
    {
        var seen = new HashSet<string>();
        foreach (var clause in declared.Line.Clauses)
        {
            if (clause is not (AlsoClause or DetailClause or BlankIsClause) && !seen.Add(Sort(clause)))
            {
                problems.Add(WordProblems.ClauseTwice(clause.Span));
            }
        }

        if (declared.Clause<AnswersClause>() is { } answers)
        {
            Distinct(answers.Answers, problems);
        }

        if (declared.Clause<OneOfClause>() is { } values)
        {
            Distinct(values.Values, problems);
        }

        foreach (var (clause, file) in declared.DetailClauses)
        {
            if (clause is DetailClause { Type: OneOfClause ofDetail })
            {
                Distinct(ofDetail.Values, file.Problems);
            }
        }
    }

    // A unit, a scale and a type say the same kind of thing: what a value looks like.
    private static string Sort(ClauseSyntax clause) => clause switch
    {
        InUnitClause or ScaleClause or OneOfClause or IsTypeClause => "type",
        InTheYardsClause => "yards",
        MolarMassClause => "molar mass",
        AnswersClause => "answers",
        NotBeforeClause => "not before",
        MarksClause => "marks",
        OfEmbryosClause => "embryos",
        PlausibleClause => "plausible",
        _ => "herd",
    };

    private static void Distinct(IEnumerable<NameSyntax> names, List<Diagnostic> problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!seen.Add(NameFolding.Fold(name.Text)))
            {
                problems.Add(WordProblems.ValueTwice(name.Span));
            }
        }
    }
}
