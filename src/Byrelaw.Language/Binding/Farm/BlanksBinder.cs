namespace Byrelaw.Language.Binding.Farm;

/// <summary>Binds <c>method is ultrasound</c>: it goes to the one kind whose detail can be that, unless the line names a kind.</summary>
internal static class BlanksBinder
{
    /// <summary>All that can be bound; what cannot fills nothing, so that a blank stays what the rule files say.</summary>
    public static ImmutableArray<BlankOf> Bind(Context context, Block block)
    {
        var blanks = new List<BlankOf>();
        foreach (var line in block.Lines.OfType<BlankOfLine>())
        {
            if (Bind(context, line) is not { } blank)
            {
                continue;
            }

            if (blanks.Find(other => other.Kind == blank.Kind && other.Place == blank.Place) is { } first)
            {
                context.Problems.Add(LineProblems.Twice(line.Span, line.Detail.Text, first.Span));
            }
            else
            {
                blanks.Add(blank);
            }
        }

        return [.. blanks];
    }

    private static BlankOf? Bind(Context context, BlankOfLine line) => Bind(context, line.Detail, line.Kind, line.Value, line.Span);

    /// <summary>Whose detail a name and one of its values mean; null, and a problem, where it is nobody's or several kinds'.</summary>
    public static BlankOf? Bind(Context context, NameSyntax detail, NameSyntax? of, NameSyntax written, SourceSpan span)
    {
        if (of is { } named)
        {
            return context.Kinds([named]) is not [var kind] ? null
                : PlaceOf(kind, detail.Text) is not (>= 0 and var place) ? context.Fail<BlankOf>(FilterProblems.NoSuchDetail(detail.Span, kind))
                : ValueOf(kind.Details[place], written.Text) is { } value ? new BlankOf(kind, place, value, span)
                : context.Fail<BlankOf>(NameProblems.NoSuchValue(written.Span, written.Text, kind.Details[place].Name, kind.Details[place].Values));
        }

        var fitting = new List<BlankOf>();
        foreach (var kind in context.Names.All.Select(name => name.Symbol).OfType<KindSymbol>().Select(symbol => symbol.Kind).Distinct().OrderBy(kind => kind.Id))
        {
            if (PlaceOf(kind, detail.Text) is >= 0 and var place && ValueOf(kind.Details[place], written.Text) is { } value)
            {
                fitting.Add(new BlankOf(kind, place, value, span));
            }
        }

        return fitting is [var only] ? only
            : context.Fail<BlankOf>(FarmProblems.BlankOfWhat(span, detail.Text, written.Text, [.. fitting.Select(one => one.Kind.Name)]));
    }

    private static int PlaceOf(Kind kind, string detail)
    {
        var folded = NameFolding.Fold(detail);
        for (var place = 0; place < kind.Details.Length; place++)
        {
            if (NameFolding.Fold(kind.Details[place].Name) == folded)
            {
                return place;
            }
        }

        return -1;
    }

    private static string? ValueOf(EntryDetail detail, string value)
    {
        var folded = NameFolding.Fold(value);
        return detail.Values.FirstOrDefault(one => NameFolding.Fold(one) == folded);
    }
}
