namespace Byrelaw.Language.Binding.Words;

/// <summary>Builds the details of a kind from the clauses of its declaration and of the layers that add to it.</summary>
internal static class DetailBuilder
{
    /// <summary>Columns that the records have anyway.</summary>
    private static readonly string[] Columns = ["date", "animal", "kind", "value", "unit", "note", "recorded", "sample", "sheet row"];

    /// <summary>The details, in the order of writing; what means nothing is told and left out.</summary>
    public static ImmutableArray<EntryDetail> Build(Declared declared, Namespace names)
    {
        var details = new List<EntryDetail>();
        EntryDetail? above = null;
        foreach (var (clause, file) in declared.DetailClauses)
        {
            var context = new Context(names, file.Problems);
            if (clause is DetailClause said)
            {
                above = Detail(said, details, context);
                if (above is not null)
                {
                    details.Add(above);
                }
            }
            else if (clause is BlankIsClause blank && WithBlank(blank, above, context) is { } whole)
            {
                details[^1] = whole;
            }
        }

        return [.. details];
    }

    private static EntryDetail? Detail(DetailClause said, List<EntryDetail> others, Context context)
    {
        var name = said.Name;
        var folded = NameFolding.Fold(name.Text);
        if (Columns.Contains(folded))
        {
            return context.Fail<EntryDetail>(WordProblems.DetailNamedAsColumn(name.Span, name.Text));
        }

        if (others.Exists(other => NameFolding.Fold(other.Name) == folded))
        {
            return context.Fail<EntryDetail>(WordProblems.DetailTwice(name.Span, name.Text));
        }

        var detail = new EntryDetail(name.Text, name.Span);
        return said.Type switch
        {
            OneOfClause values => detail with { Type = FactType.OneOf, Values = KindBuilder.Distinct(values.Values) },
            IsTypeClause type => detail with { Type = type.Type },
            InUnitClause unit => KindBuilder.Unit(unit.Unit, context) is { } found ? detail with { Type = FactType.Amount, Unit = found } : null,
            ScaleClause scale => KindBuilder.Scale(scale, context) is { } found ? detail with { Type = FactType.Number, Scale = found } : null,
            _ => null,
        };
    }

    private static EntryDetail? WithBlank(BlankIsClause blank, EntryDetail? above, Context context)
    {
        if (above is null)
        {
            return context.Fail<EntryDetail>(WordProblems.BlankOfWhat(blank.Span));
        }

        var place = Place(above, blank.Value);
        return place >= 0 ? above with { BlankIs = place } : context.Fail<EntryDetail>(WordProblems.BlankIsNoValue(blank.Value.Span, above.Name, above.Values));
    }

    private static int Place(EntryDetail detail, NameSyntax value)
    {
        var folded = NameFolding.Fold(value.Text);
        for (var i = 0; i < detail.Values.Length; i++)
        {
            if (NameFolding.Fold(detail.Values[i]) == folded)
            {
                return i;
            }
        }

        return -1;
    }
}
