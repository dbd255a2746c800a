namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Windows: what their names and numbers mean.</summary>
internal static class WindowBinding
{
    private const int Most = 2;

    /// <summary>All windows of a condition; null where one of them means nothing.</summary>
    public static ImmutableArray<Window>? Windows(this Context context, TailSorter tails)
    {
        var windows = ImmutableArray.CreateBuilder<Window>();
        var isWhole = true;
        foreach (var syntax in tails.Windows)
        {
            if (windows.Count == Most)
            {
                context.Problems.Add(ConditionProblems.TooManyWindows(syntax.Span));
                isWhole = false;
            }
            else if (context.Window(syntax) is { } window)
            {
                windows.Add(window);
            }
            else
            {
                isWhole = false;
            }
        }

        return isWhole ? windows.ToImmutable() : null;
    }

    private static Window? Window(this Context context, WindowSyntax syntax) => syntax switch
    {
        InTheLastSyntax last => context.Length(last.Length) is { } length ? new InTheLast(length) { Span = syntax.Span } : null,
        BeforeDateSyntax before => context.Before(before),
        BeforeDaySyntax before => context.Day(before.Day) is { } day ? new BeforeDay(day) { Span = syntax.Span } : null,
        DaysAfterSyntax after => context.After(after),
        AgoSyntax ago => context.Ago(ago),
        SinceLastSyntax since => context.Kinds(since.Kinds) is { } kinds ? new SinceLast(kinds) { Span = syntax.Span } : null,
        FromAfterLastSyntax from => context.FromAfter(from),
        SinceDateSyntax { Date.Name: { } name } when context.Names.Find(name.Text) is BuiltInSymbol { Name: "birth" } => new SinceBirth { Span = syntax.Span },
        SinceDateSyntax { Date.Name: { } name } when context.Names.IsEvent(name) => context.Kinds([name]) is { } kinds ? new SinceLast(kinds) { Span = syntax.Span } : null,
        SinceDateSyntax since => context.Date(since.Date) is { } date ? new SinceDate(date) { Span = syntax.Span } : null,
        _ => new Ever { Span = syntax.Span },
    };

    private static BeforeDate? Before(this Context context, BeforeDateSyntax before)
    {
        var (length, date) = (context.Length(before.Length), context.Date(before.Date));
        return length is { } found && date is not null ? new BeforeDate(found, date) { Span = before.Span } : null;
    }

    private static DaysAfter? After(this Context context, DaysAfterSyntax after)
    {
        var (length, day) = (context.Length(after.Length), context.Day(after.Day));
        return length is { } found && day is not null ? new DaysAfter(found, day) { Span = after.Span } : null;
    }

    private static WindowDay? Day(this Context context, WindowDaySyntax day) =>
        day is { IsLast: false, Names: [] or [_] } && !(day.Names is [var only] && context.Names.IsEvent(only))
            ? context.Date(new DateReferenceSyntax(day.Date, day.Names.FirstOrDefault()) { Span = day.Span }) is { } date ? new WindowDay(date, []) : null
            : context.Kinds(day.Names) is { } kinds ? new WindowDay(null, kinds) : null;

    private static Window? FromAfter(this Context context, FromAfterLastSyntax from)
    {
        if (from is { IsDayOf: false, Kinds: [var only] } && context.Names.Find(only.Text) is SpellSymbol { Spell: var spell })
        {
            return spell is not null && context.Length(from.Wait) is { } after ? new FromAfterSpell(after, spell) { Span = from.Span } : null;
        }

        var (wait, kinds) = (context.Length(from.Wait), context.Kinds(from.Kinds));
        return wait is { } length && kinds is { } found ? new FromAfterLast(length, found) { IsDayOf = from.IsDayOf, Span = from.Span } : null;
    }

    private static Window? Ago(this Context context, AgoSyntax ago)
    {
        if (ago.Compare.Comparison is not (Comparison.AtLeast or Comparison.Between))
        {
            return context.Fail<Window>(WindowProblems.AgoWithOther(ago.Span));
        }

        return context.TimeTest(ago.Compare) is not { } test ? null
            : test.Comparison == Comparison.Between ? new BetweenAgo(test.Low, test.High) { Span = ago.Span }
            : new AtLeastAgo(test.Low) { Span = ago.Span };
    }

    private static DateReference? Date(this Context context, DateReferenceSyntax date)
    {
        if (date.Date is { } day)
        {
            return new DateReference(null, day.Value);
        }

        var name = date.Name!;
        return context.Names.Find(name.Text) switch
        {
            DateSymbol found => new DateReference(found.Name, found.Value),
            KindSymbol => context.Fail<DateReference>(WindowProblems.SinceWithoutLast(name.Span, name.Text)),
            _ => context.Fail<DateReference>(context.NotFound(name, symbol => symbol is DateSymbol, "a date of the programme")),
        };
    }
}
