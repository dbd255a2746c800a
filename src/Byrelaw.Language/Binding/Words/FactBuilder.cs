namespace Byrelaw.Language.Binding.Words;

/// <summary>Builds facts from their declarations.</summary>
internal static class FactBuilder
{
    /// <summary>The fact; null where what it looks like is not known.</summary>
    public static Fact? Build(Declared declared, int id, Context context)
    {
        var name = declared.Line.Name;
        var fact = new Fact(name.Text, declared.AlsoNames, name.Span) { Id = id, Plausible = KindBuilder.Plausible(declared, context) };
        if (fact.Plausible is not null && declared.Clause<InUnitClause>() is null && declared.Clause<IsTypeClause>() is not { Type: FactType.Number })
        {
            context.Problems.Add(WordProblems.PlausibleOfNoNumber(declared.Clause<PlausibleClause>()!.Span, name.Text));
        }

        foreach (var clause in declared.Line.Clauses)
        {
            switch (clause)
            {
                case OneOfClause values:
                    return Added(declared, fact with { Type = FactType.OneOf, Values = KindBuilder.Distinct(values.Values) });
                case IsTypeClause type:
                    return fact with { Type = type.Type };
                case InUnitClause unit:
                    return KindBuilder.Unit(unit.Unit, context) is { } found ? fact with { Type = FactType.Amount, Unit = found } : null;
                default:
                    break;
            }
        }

        context.Problems.Add(WordProblems.MissingType(
            name.Span, name.Text, "`is one of A, B`, `is number`, `is date`, `is text`, `is identity`, or `in` and a unit"));
        return null;
    }

    /// <summary>With the values that layers add, each with the place where it is added.</summary>
    private static Fact Added(Declared declared, Fact fact)
    {
        var taken = fact.Values.Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        var added = ImmutableArray.CreateBuilder<(string Value, SourceSpan At)>();
        foreach (var (value, file) in declared.ValuesAdded)
        {
            if (taken.Add(NameFolding.Fold(value.Text)))
            {
                added.Add((value.Text, value.Span));
            }
            else
            {
                file.Problems.Add(WordProblems.ValueTwice(value.Span));
            }
        }

        return fact with { Values = [.. fact.Values, .. added.Select(one => one.Value)], Added = added.ToImmutable() };
    }
}
