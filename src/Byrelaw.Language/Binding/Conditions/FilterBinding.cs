namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Binds filters: what a detail's name and values mean, of the kind before them.</summary>
internal static class FilterBinding
{
    /// <summary>The kind that a name and its filters mean; null, and a problem, where a filter does not fit, or where it happens to embryos and to no animal.</summary>
    public static T? Filtered<T>(this Context context, T kind, NameSyntax name) where T : Kind
    {
        if (kind is EventKind { IsOfEmbryos: true })
        {
            return context.Fail<T>(ConditionProblems.OfEmbryos(name.Named.Span, kind.Name));
        }

        if (name.Filters.IsEmpty)
        {
            return kind;
        }

        var tests = ImmutableArray.CreateBuilder<DetailTest>(name.Filters.Length);
        foreach (var filter in name.Filters)
        {
            if (context.Test(kind, filter) is { } test)
            {
                tests.Add(test);
            }
        }

        return tests.Count == name.Filters.Length ? (T)context.Names.Filtered.Of(kind, tests.ToImmutable()) : null;
    }

    private static DetailTest? Test(this Context context, Kind kind, FilterSyntax filter)
    {
        var folded = NameFolding.Fold(filter.Detail.Text);
        for (var place = 0; place < kind.Details.Length; place++)
        {
            if (NameFolding.Fold(kind.Details[place].Name) == folded)
            {
                return context.Test(kind.Details[place], place, filter);
            }
        }

        return context.Fail<DetailTest>(FilterProblems.NoSuchDetail(filter.Detail.Span, kind));
    }

    private static DetailTest? Test(this Context context, EntryDetail detail, int place, FilterSyntax filter)
    {
        var isNumber = detail.Type is FactType.Number or FactType.Amount;
        return filter switch
        {
            { Values.IsEmpty: true, Compare: null } => new DetailRecorded(detail, place),
            { Compare: { } compare } when isNumber =>
                context.NumberTest(compare, new AmountSubject(detail.Name, detail.Unit, detail.Scale, null)) is not { } test ? null
                : test.Low.PercentOf is not null || test.High.PercentOf is not null ? context.Fail<DetailTest>(FilterProblems.OtherType(compare.Span, detail))
                : new DetailNumber(detail, place, test, filter.Not),
            { Compare: { Comparison: Comparison.Exactly } compare } => context.Is(detail, place, filter, [new ValueSyntax(compare.Span.Text, null, null) { Span = compare.Span }]),
            { Compare: { } compare } => context.Fail<DetailTest>(FilterProblems.OtherType(compare.Span, detail)),
            _ when isNumber => context.Fail<DetailTest>(FilterProblems.OtherType(filter.Values[0].Span, detail)),
            _ => context.Is(detail, place, filter, filter.Values),
        };
    }

    private static DetailIs? Is(this Context context, EntryDetail detail, int place, FilterSyntax filter, ImmutableArray<ValueSyntax> written)
    {
        var values = ImmutableArray.CreateBuilder<string>(written.Length);
        foreach (var value in written)
        {
            if (detail.Type == FactType.Date != value.Date is not null)
            {
                return context.Fail<DetailIs>(FilterProblems.OtherType(value.Span, detail));
            }

            var declared = detail.Type == FactType.OneOf
                ? detail.Values.FirstOrDefault(other => NameFolding.Fold(other) == NameFolding.Fold(value.Text))
                : value.Text;
            if (declared is null)
            {
                return context.Fail<DetailIs>(NameProblems.NoSuchValue(value.Span, value.Text, detail.Name, detail.Values));
            }

            if (!values.Contains(declared))
            {
                values.Add(declared);
            }
        }

        return new DetailIs(detail, place, values.ToImmutable(), filter.Not);
    }
}
