namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>Lines that declare the words of the farm: a name, what it is, and what else it is called.</summary>
internal static class DeclarationPrinter
{
    /// <summary>An event, a measure, a test or a fact.</summary>
    public static Row Print(DeclarationLine line) => line.Kind switch
    {
        DeclarationKind.Event => Row("event", line, Event(line.Clauses)),
        DeclarationKind.Measure => Row("measure", line, Measure(line.Clauses)),
        DeclarationKind.Test => Row("test", line, Type(line.Clauses) + InTheYards(line.Clauses), AlsoAndDetails(line.Clauses)),
        _ => Row("fact", line, Type(line.Clauses) + Plausible(line.Clauses), Also(line.Clauses)),
    };

    /// <summary>A spell.</summary>
    public static Row Print(SpellLine spell) =>
        new("spell", Words.Name(spell.Name),
        [
            $"from {Words.Name(spell.From)} until {Words.Name(spell.Until)}"
            + (spell.WithMaleFrom is { } age ? $", or in a mob with a male from {Words.Duration(age)} of age" : ""),
        ]);

    /// <summary>Further details.</summary>
    public static Row Print(AddDetailsLine add) => new("add", $"to {Words.Name(add.Name)}", [Details(add.Clauses)]);

    /// <summary>Further values.</summary>
    public static Row Print(AddValuesLine add) => new("add", string.Join(", ", add.Values.Select(Words.Name)), [$"to {Words.Name(add.Fact)}"]);

    /// <summary>Further names.</summary>
    public static Row Print(CallLine call) => new("call", Words.Name(call.Name), [Also([call.Also])]);

    private static Row Row(string head, DeclarationLine line, params ReadOnlySpan<string> cells)
    {
        var last = cells.Length;
        while (last > 0 && cells[last - 1].Length == 0)
        {
            last--;
        }

        return new Row(head, Words.Name(line.Name), [.. cells[..last]]);
    }

    /// <summary>An event's other names come first: most events have nothing else.</summary>
    private static string Event(ImmutableArray<ClauseSyntax> clauses)
    {
        string[] parts =
        [
            Also(clauses),
            One<NotBeforeClause>(clauses) is { } age ? $"not before {Words.Duration(age.Age)} of age" : "",
            One<HerdClause>(clauses) is { } herd ? $"{(herd.Joins ? "joins" : "leaves")} the herd{(herd.ForGood ? " for good" : "")}" : "",
            One<MarksClause>(clauses) is { } marks ? $"marks {NameFolding.Fold(marks.What.Text)}" : "",
            One<OfEmbryosClause>(clauses) is null ? "" : "of embryos",
            Details(clauses),
        ];
        return string.Join(", ", parts.Where(part => part.Length > 0));
    }

    private static string[] Measure(ImmutableArray<ClauseSyntax> clauses)
    {
        var (type, yards, also) = (Type(clauses), Plausible(clauses) + InTheYards(clauses), AlsoAndDetails(clauses));
        return One<MolarMassClause>(clauses) is { } mass
            ? [type + ",", $"molar mass {Words.Number(mass.Value)}{yards}", also]
            : [type + yards, "", also];
    }

    private static string Type(ImmutableArray<ClauseSyntax> clauses) => clauses.Select(Type).OfType<string>().FirstOrDefault("");

    private static string? Type(ClauseSyntax clause) => clause switch
    {
        InUnitClause unit => $"in {Words.Unit(unit.Unit.Text, 0)}",
        ScaleClause scale => $"on scale {Words.Number(scale.From)} to {Words.Number(scale.To)}",
        AnswersClause answers => $"answers {Words.Names(answers.Answers)}",
        OneOfClause values => $"is one of {Words.Names(values.Values)}",
        IsTypeClause { Type: FactType.Number } => "is number",
        IsTypeClause { Type: FactType.Date } => "is date",
        IsTypeClause { Type: FactType.Identity } => "is identity",
        IsTypeClause => "is text",
        _ => null,
    };

    private static string InTheYards(ImmutableArray<ClauseSyntax> clauses) => One<InTheYardsClause>(clauses) is null ? "" : "  in the yards";

    private static string Plausible(ImmutableArray<ClauseSyntax> clauses) =>
        One<PlausibleClause>(clauses) is { } range ? $"  plausible {Words.Number(range.From)} to {Words.Number(range.To)}" : "";

    private static string AlsoAndDetails(ImmutableArray<ClauseSyntax> clauses) =>
        string.Join(", ", new[] { Also(clauses), Details(clauses) }.Where(part => part.Length > 0));

    private static string Details(ImmutableArray<ClauseSyntax> clauses) => string.Join(", ", clauses.Select(clause => clause switch
    {
        DetailClause detail => $"with {Words.Name(detail.Name)} {Type(detail.Type)}",
        BlankIsClause blank => $"blank is {Words.Name(blank.Value)}",
        _ => "",
    }).Where(part => part.Length > 0));

    private static string Also(ImmutableArray<ClauseSyntax> clauses)
    {
        var names = clauses.OfType<AlsoClause>().SelectMany(clause => clause.Names).ToList();
        return names.Count == 0 ? "" : $"also {Words.Names(names)}";
    }

    private static T? One<T>(ImmutableArray<ClauseSyntax> clauses) where T : ClauseSyntax => clauses.OfType<T>().FirstOrDefault();
}
